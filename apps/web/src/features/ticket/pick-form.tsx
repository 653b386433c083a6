import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { useQuery } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import type { CameFrom, PartRef, PickPart, TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { ApiProblem } from '../../lib/problem';
import { scanQuery } from '../../lib/scan-query';
import { useMay } from '../../lib/session';
import { barredByText, type BarredPart } from './barred-by';
import { BarredHere } from './barred-here';
import { useTicketAct } from './ticket-query';
import classes from './parts-panel.module.css';

interface PickFormProps {
  ticket: TicketView;
  /** null picks a spare for the owner */
  position: string | null;
  /** the part the ruling requires */
  suggested: PartRef | null;
  most?: number;
  /** parts that papers bar here, said as soon as their number is typed */
  barred: readonly BarredPart[];
}

/** Pick a part: the required one with one press, any other by scan or number; a manager may write an exception. */
export function PickForm({ ticket, position, suggested, most = 1, barred }: PickFormProps) {
  const [typed, setTyped] = useState({ part: '', quantity: String(most), why: '', from: 'shelf' as CameFrom });
  const set = (change: Partial<typeof typed>) => setTyped({ ...typed, ...change });
  const mayExcept = useMay('except-part');
  const act = useTicketAct(ticket.id);
  const readAs = useReadAs(barred.length > 0 ? typed.part : '');
  const [missed, setMissed] = useState('');
  const pick = (partText: string) => {
    setMissed(partText);
    const body: PickPart = {
      position,
      partText,
      quantity: Number(typed.quantity) || 1,
      purpose: position === null ? 'spare' : 'fit',
      exceptionReason: typed.why.trim() || null,
      from: typed.from,
    };
    act.mutate(
      { method: 'POST', path: '/picks', body },
      { onSuccess: () => set({ part: '', why: '', from: 'shelf' }) },
    );
  };
  const wait = () => {
    const body = { position, partText: missed, quantity: Number(typed.quantity) || 1 };
    act.mutate({ method: 'POST', path: '/waits', body });
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
      <HowMany value={typed.quantity} onType={(quantity) => set({ quantity })} />
      {ticket.shelf.kept ? <FromField value={typed.from} onChange={(from) => set({ from })} /> : null}
      {mayExcept && isAbout(act.error, 'exceptionReason') ? (
        <Field label="Manager's reason for an exception" value={typed.why} onType={(why) => set({ why })} />
      ) : null}
      <Button type="submit" disabled={typed.part.trim() === ''}>
        Pick
      </Button>
      <BarredHere barred={barredByText(barred, typed.part, readAs)} warranty={ticket.unit.warranty} />
      <ActProblem error={act.error} />
      {isAbout(act.error, 'from') ? (
        <Button variant="subtle" loading={act.isPending} onClick={wait}>
          Wait for it
        </Button>
      ) : null}
    </form>
  );
}

/** The part that the server reads a text as: a number in any writing, a pack, the code of a bag; null for none. */
function useReadAs(text: string): string | null {
  const [settled] = useDebouncedValue(text.trim(), 200);
  const { data } = useQuery({ ...scanQuery(settled), enabled: settled.length > 2 });
  return data?.kind === 'part' && settled === text.trim() ? data.part.key : null;
}

const FROM_CHOICES: { value: CameFrom; label: string }[] = [
  { value: 'shelf', label: 'From the shelf' },
  { value: 'owner', label: 'Brought by the owner' },
  { value: 'bought', label: 'Bought for this ticket' },
];

function HowMany({ value, onType }: { value: string; onType: (text: string) => void }) {
  return (
    <TextInput
      aria-label="How many"
      type="number"
      min={1}
      max={500}
      value={value}
      className={classes.quantity}
      onChange={(event) => onType(event.currentTarget.value)}
    />
  );
}

function FromField({ value, onChange }: { value: CameFrom; onChange: (from: CameFrom) => void }) {
  return (
    <NativeSelect
      aria-label="Where it comes from"
      className={classes.from}
      value={value}
      data={FROM_CHOICES}
      onChange={(event) => onChange(event.currentTarget.value as CameFrom)}
    />
  );
}

/** The refusal names the field. */
function isAbout(error: unknown, field: string): boolean {
  return error instanceof ApiProblem && error.problem.field === field;
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
