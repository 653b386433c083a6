import { Button, Modal } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { Marks } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { MarksFields } from './marks-fields';
import { marksFrom, typedFrom } from './marks-typed';
import classes from './place-entry.module.css';

interface MarksDialogProps {
  title: string;
  first: Marks | null;
  busy: boolean;
  error: unknown;
  onClose: () => void;
  onMarks: (marks: Marks) => void;
}

/** Asks for the marks when no number can be read; what was not looked at stays empty. */
export function MarksDialog({ title, first, busy, error, onClose, onMarks }: MarksDialogProps) {
  const [typed, setTyped] = useState(() => typedFrom(first));
  const marks = marksFrom(typed);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (marks) onMarks(marks);
  };
  return (
    <Modal opened onClose={onClose} title={`No number readable: ${title}`} size="lg">
      <form onSubmit={submit}>
        <MarksFields typed={typed} onType={setTyped} />
        <ActProblem error={error} />
        <div className={classes.acts}>
          <Button onClick={onClose}>Leave it</Button>
          <Button type="submit" variant="filled" loading={busy} disabled={marks === null}>
            Keep the marks
          </Button>
        </div>
      </form>
    </Modal>
  );
}
