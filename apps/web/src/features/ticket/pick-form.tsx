import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { PartRef, TicketView } from '../../../../../libs/contracts';
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
  const [partText, setPartText] = useState('');
  const [quantity, setQuantity] = useState(String(most));
  const [why, setWhy] = useState('');
  const mayExcept = useMay('except-part');
  const act = useTicketAct(ticket.id);
  const pick = (text: string) =>
    act.mutate(
      {
        method: 'POST',
        path: '/picks',
        body: {
          position,
          partText: text,
          quantity: Number(quantity) || 1,
          purpose: position === null ? 'spare' : 'fit',
          exceptionReason: why.trim() || null,
        },
      },
      { onSuccess: () => setPartText('') },
    );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (partText.trim() !== '') pick(partText.trim());
  };
  const needed =
    suggested &&
    !ticket.picks.some(
      (one) => one.position === position && one.part.key === suggested.key && one.state !== 'returned',
    );
  const what = position === null ? 'Spare part number' : 'Part number to fit';
  return (
    <form onSubmit={submit} className={classes.form}>
      {suggested && needed ? (
        <Button variant="filled" loading={act.isPending} onClick={() => pick(suggested.number)}>
          Pick {suggested.number}
        </Button>
      ) : null}
      <TextInput
        aria-label={what}
        placeholder={what}
        value={partText}
        autoCapitalize="characters"
        spellCheck={false}
        className={classes.number}
        onChange={(event) => setPartText(event.currentTarget.value)}
      />
      <TextInput
        aria-label="How many"
        type="number"
        min={1}
        max={500}
        value={quantity}
        className={classes.quantity}
        onChange={(event) => setQuantity(event.currentTarget.value)}
      />
      {mayExcept && position !== null && act.error ? (
        <TextInput
          aria-label="Manager's reason for an exception"
          placeholder="Manager's reason for an exception"
          value={why}
          className={classes.number}
          onChange={(event) => setWhy(event.currentTarget.value)}
        />
      ) : null}
      <Button type="submit" disabled={partText.trim() === ''}>
        Pick
      </Button>
      <ActProblem error={act.error} />
    </form>
  );
}
