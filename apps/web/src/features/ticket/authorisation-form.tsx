import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { Authorise, TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { readMoney } from '../../lib/say';
import { useTicketAct } from './ticket-query';
import classes from './labour-panel.module.css';

const WAYS: readonly { value: Authorise['how']; label: string }[] = [
  { value: 'phone', label: 'On the phone' },
  { value: 'in-person', label: 'In person' },
  { value: 'email', label: 'By e-mail' },
  { value: 'signature', label: 'By signature' },
];

/** Who said yes, how, and to which amount. */
export function AuthorisationForm({ ticket }: { ticket: TicketView }) {
  const [by, setBy] = useState(ticket.owner.name);
  const [how, setHow] = useState<Authorise['how']>('phone');
  const [money, setMoney] = useState((ticket.totalMinor / 100).toFixed(2));
  const act = useTicketAct(ticket.id);
  const amountMinor = readMoney(money);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (amountMinor !== null) act.mutate({ method: 'POST', path: '/authorisation', body: { by, how, amountMinor } });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <TextInput label="Who said yes" value={by} required onChange={(event) => setBy(event.currentTarget.value)} />
      <NativeSelect
        label="How"
        data={[...WAYS]}
        value={how}
        onChange={(event) => setHow(WAYS.find(({ value }) => value === event.currentTarget.value)?.value ?? 'phone')}
      />
      <TextInput
        label={`Up to, in ${ticket.currency}`}
        inputMode="decimal"
        value={money}
        error={amountMinor === null ? `“${money}” is no amount; write it as 45.50.` : null}
        onChange={(event) => setMoney(event.currentTarget.value)}
      />
      <Button type="submit" loading={act.isPending} disabled={amountMinor === null || by.trim() === ''}>
        Write down the owner&apos;s word
      </Button>
      <ActProblem error={act.error} />
    </form>
  );
}
