import { NativeSelect, TextInput } from '@mantine/core';
import { useRef, useState, type DragEvent } from 'react';
import type { PhotoView, TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { photoPlace } from './photo-place';
import { useTakePhotos } from './photos-query';
import classes from './photos.module.css';

/** What is asked for here; a telephone turns its own kinds into one of these when it is asked so. */
const KINDS = 'image/jpeg,image/png,image/webp';

/** At which of the three a photo is taken, by the stage the ticket is in. */
const stageOf = ({ stage }: TicketView): PhotoView['stage'] =>
  stage === 'intake' || stage === 'handover' ? stage : 'inspection';

/** What a photo can be of: the whole unit, or one of its places. */
const subjects = (ticket: TicketView) => [
  { value: '', label: 'The whole unit' },
  ...ticket.places.map(({ position, place }) => ({
    value: JSON.stringify([position, place]),
    label: photoPlace(ticket, { position, place }),
  })),
];

/** Take photos or drop them here: of the whole unit, or of a place. */
export function PhotoForm({ ticket }: { ticket: TicketView }) {
  const [of, setOf] = useState('');
  const [caption, setCaption] = useState('');
  const [over, setOver] = useState(false);
  const input = useRef<HTMLInputElement>(null);
  const act = useTakePhotos(ticket.id);
  const send = (list: FileList | null) => {
    const files = [...(list ?? [])];
    if (files.length === 0) return;
    const [position, place] = of === '' ? [] : (JSON.parse(of) as [string, number]);
    const fields = {
      stage: stageOf(ticket),
      caption: caption.trim(),
      ...(position === undefined ? {} : { position, place: String(place) }),
    };
    act.mutate({ fields, files }, { onSuccess: () => setCaption('') });
    if (input.current) input.current.value = '';
  };
  const hang = (event: DragEvent) => (event.preventDefault(), setOver(true));
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    send(event.dataTransfer.files);
  };
  return (
    <div className={classes.form} data-over={over} onDragOver={hang} onDragLeave={() => setOver(false)} onDrop={drop}>
      <NativeSelect
        label="Of"
        data={subjects(ticket)}
        value={of}
        onChange={(event) => setOf(event.currentTarget.value)}
      />
      <TextInput
        label="What it shows"
        value={caption}
        maxLength={200}
        onChange={(event) => setCaption(event.currentTarget.value)}
      />
      <label className={classes.pick}>
        {act.isPending ? 'Sending ...' : 'Take or choose photos'}
        <input
          ref={input}
          type="file"
          accept={KINDS}
          multiple
          disabled={act.isPending}
          onChange={(event) => send(event.currentTarget.files)}
        />
      </label>
      <p className="soft">Or drop them here. Where they were taken is not kept.</p>
      <ActProblem error={act.error} />
    </div>
  );
}
