import { Button, Modal } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import type { Marks, TellRequest } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { MarksFields } from './marks-fields';
import { hasMarks, marksFrom, typedFrom } from './marks-typed';
import { TellList } from './tell-list';
import { tellQuery } from './tell-query';
import classes from './place-entry.module.css';

/** What is kept: the marks, and the candidate a person picked with how it was told. */
export interface MarksKept {
  marks: Marks;
  pickedCandidate: string | null;
  toldBy: string | null;
}

interface MarksDialogProps {
  title: string;
  ticketId: number;
  asked: Omit<TellRequest, 'marks'>;
  first: Marks | null;
  busy: boolean;
  error: unknown;
  onClose: () => void;
  onKeep: (kept: MarksKept) => void;
}

/**
 * Asks for the marks when no number can be read; what was not looked at stays empty. With every mark it shows the
 * parts it can be and their verdicts, so that nobody measures more than the answer needs.
 */
export function MarksDialog({ title, ticketId, asked, first, busy, error, onClose, onKeep }: MarksDialogProps) {
  const [typed, setTyped] = useState(() => typedFrom(first));
  const [settled] = useDebouncedValue(typed, 300);
  const marks = marksFrom(typed);
  const told = useQuery(tellQuery(ticketId, asked, marksFrom(settled)));
  const keep = (pickedCandidate: string | null, toldBy: string | null) => {
    if (hasMarks(marks)) onKeep({ marks, pickedCandidate, toldBy });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    keep(null, null);
  };
  return (
    <Modal opened onClose={onClose} title={`No number readable: ${title}`} size="xl">
      <form onSubmit={submit}>
        <MarksFields typed={typed} onType={setTyped} />
        <div className={classes.acts}>
          <Button onClick={onClose}>Leave it</Button>
          <Button type="submit" variant="filled" loading={busy} disabled={!hasMarks(marks)}>
            Keep the marks
          </Button>
        </div>
      </form>
      <ActProblem error={error ?? told.error} />
      {hasMarks(marks) && told.data ? <TellList answer={told.data} busy={busy} onPick={keep} /> : null}
    </Modal>
  );
}
