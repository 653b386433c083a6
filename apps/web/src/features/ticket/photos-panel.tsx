import { Button, Checkbox } from '@mantine/core';
import { useState } from 'react';
import type { PhotoView, TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { PhotoThumb } from '../../components/photo-thumb';
import { ReasonDialog } from '../../components/reason-dialog';
import { useMay } from '../../lib/session';
import { PhotoForm } from './photo-form';
import { photoPlace } from './photo-place';
import { usePhotoAct } from './photos-query';
import classes from './photos.module.css';

/** Every photo of the ticket, which of them the owner's sheet shows, and room for more. */
export function PhotosPanel({ ticket }: { ticket: TicketView }) {
  const may = useMay('take-photos') && ticket.closedAt === null;
  return (
    <>
      {ticket.photos.length === 0 ? <p className="soft">No photo taken yet.</p> : null}
      <ul className={classes.photos}>
        {ticket.photos.map((photo) => (
          <Photo key={photo.id} ticket={ticket} photo={photo} may={may} />
        ))}
      </ul>
      {may ? <PhotoForm ticket={ticket} /> : null}
    </>
  );
}

function Photo({ ticket, photo, may }: { ticket: TicketView; photo: PhotoView; may: boolean }) {
  const act = usePhotoAct(ticket.id, photo);
  const [removing, setRemoving] = useState(false);
  const where = photoPlace(ticket, photo);
  // A tick is seen at once; what the server answers is what stays.
  const ticked = act.isPending && act.variables && 'onSheet' in act.variables ? act.variables.onSheet : null;
  return (
    <li className={classes.photo}>
      <PhotoThumb photo={photo} where={where} />
      <p className={classes.words}>
        <strong>{where}</strong>, at {photo.stage}
        {photo.caption === '' ? '' : `: ${photo.caption}`}
      </p>
      {may ? (
        <>
          <Checkbox
            label="On the owner's sheet"
            checked={ticked ?? photo.onSheet}
            onChange={(event) => act.mutate({ onSheet: event.currentTarget.checked })}
          />
          <Button variant="subtle" aria-label={`Take away: ${where}`} onClick={() => setRemoving(true)}>
            Take away
          </Button>
        </>
      ) : null}
      {removing ? null : <ActProblem error={act.error} />}
      <ReasonDialog
        title="Take the photo away"
        act="Take it away"
        danger
        open={removing}
        busy={act.isPending}
        error={act.error}
        onClose={() => setRemoving(false)}
        onReason={(reason) => act.mutate({ reason }, { onSuccess: () => setRemoving(false) })}
      />
    </li>
  );
}
