import { Button, Modal, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { Marks } from '../../../../../libs/contracts';
import { readLength } from './marks-words';
import classes from './place-entry.module.css';

interface MarksDialogProps {
  title: string;
  first: Marks | null;
  busy: boolean;
  onClose: () => void;
  onMarks: (marks: Marks) => void;
}

const LENGTH_HINT = 'Millimetres, or inches such as 5/16 in.';

/** What a hand lens and a calliper show when no number can be read; what was not looked at stays empty. */
export function MarksDialog({ title, first, busy, onClose, onMarks }: MarksDialogProps) {
  const [head, setHead] = useState(first?.headMarks ?? '');
  const [diameter, setDiameter] = useState(first?.diameterMm?.toString() ?? '');
  const [length, setLength] = useState(first?.lengthMm?.toString() ?? '');
  const [grooved, setGrooved] = useState(
    first?.grooved === undefined || first.grooved === null ? '' : first.grooved ? 'yes' : 'no',
  );
  const [finish, setFinish] = useState(first?.finish ?? '');
  const bad = (text: string) =>
    text.trim() !== '' && readLength(text) === null ? `“${text}” is no length. ${LENGTH_HINT}` : null;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    event.stopPropagation();
    if (bad(diameter) || bad(length)) return;
    onMarks({
      headMarks: head.trim() || null,
      diameterMm: readLength(diameter),
      lengthMm: readLength(length),
      grooved: grooved === '' ? null : grooved === 'yes',
      finish: finish.trim() || null,
    });
  };
  return (
    <Modal opened onClose={onClose} title={`No number readable: ${title}`} size="lg">
      <form onSubmit={submit}>
        <div className={classes.marks}>
          <TextInput
            label="Head marks"
            description="What is on the head: lines, letters, figures, or none."
            value={head}
            onChange={(event) => setHead(event.currentTarget.value)}
            data-autofocus
          />
          <TextInput
            label="Diameter"
            description={LENGTH_HINT}
            value={diameter}
            error={bad(diameter)}
            onChange={(event) => setDiameter(event.currentTarget.value)}
          />
          <TextInput
            label="Length under the head"
            description={LENGTH_HINT}
            value={length}
            error={bad(length)}
            onChange={(event) => setLength(event.currentTarget.value)}
          />
          <NativeSelect label="Groove" value={grooved} onChange={(event) => setGrooved(event.currentTarget.value)}>
            <option value="">Not looked at</option>
            <option value="yes">Grooved</option>
            <option value="no">No groove</option>
          </NativeSelect>
          <TextInput
            label="Finish"
            description="It never decides by itself: makers change finishes."
            value={finish}
            onChange={(event) => setFinish(event.currentTarget.value)}
          />
        </div>
        <div className={classes.acts}>
          <Button onClick={onClose}>Leave it</Button>
          <Button type="submit" variant="filled" loading={busy}>
            Keep the marks
          </Button>
        </div>
      </form>
    </Modal>
  );
}
