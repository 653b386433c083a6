import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { PartRef, PickPart, TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useMay } from '../../lib/session';
import { useTicketAct } from './ticket-query';
import classes from './parts-panel.module.css';

interface PickFormProps {
  ticket: TicketView;
  /** null picks a spare for the owner */
  position: string | null;
  /** the part the ruling requires */
  suggested: PartRef | null;
  most?: number;
}

/** Pick a part: the required one with one press, any other by scan or number; a manager may write an exception. */
export function PickForm({ ticket, position, suggested, most = 1 }: PickFormProps) {
  const [typed, setTyped] = useState({ part: '', quantity: String(most), why: '' });
  const set = (change: Partial<typeof typed>) => setTyped({ ...typed, ...change });
  const mayExcept = useMay('except-part');
  const act = useTicketAct(ticket.id);
  const pick = (partText: string) => {
    const body: PickPart = {
      position,
      partText,
      quantity: Number(typed.quantity) || 1,
      purpose: position === null ? 'spare' : 'fit',
      exceptionReason: typed.why.trim() || null,
    };
    act.mutate({ method: 'POST', path: '/picks', body }, { onSuccess: () => set({ part: '', why: '' }) });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (typed.part.trim() !== '') pick(typed.part.trim());
  };
  const what = position === null ? 'Spare part number' : 'Part number to fit';
  return (
    <form onSubmit={submit} className={classes.form}>
      {suggested && !isPicked(ticket, position, suggested) ? (
        <Button variant="filled" loading={act.isPending} onClick={() => pick(suggested.number)}>
          Pick {suggested.number}
        </Button>
      ) : null}
      <Field label={what} value={typed.part} onType={(part) => set({ part })} />
      <TextInput
        aria-label="How many"
        type="number"
        min={1}
        max={500}
        value={typed.quantity}
        className={classes.quantity}
        onChange={(event) => set({ quantity: event.currentTarget.value })}
      />
      {mayExcept && position !== null && act.error ? (
        <Field label="Manager's reason for an exception" value={typed.why} onType={(why) => set({ why })} />
      ) : null}
      <Button type="submit" disabled={typed.part.trim() === ''}>
        Pick
      </Button>
      <ActProblem error={act.error} />
    </form>
  );
}

function Field({ label, value, onType }: { label: string; value: string; onType: (text: string) => void }) {
  return (
    <TextInput
      aria-label={label}
      placeholder={label}
      value={value}
      autoComplete="off"
      spellCheck={false}
      className={classes.number}
      onChange={(event) => onType(event.currentTarget.value)}
    />
  );
}

function isPicked(ticket: TicketView, position: string | null, part: PartRef): boolean {
  return ticket.picks.some(
    (pick) => pick.position === position && pick.part.key === part.key && pick.state !== 'returned',
  );
}
