import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { readMoney, sayInstant, sayMoney } from '../../lib/say';
import { useMay } from '../../lib/session';
import { AuthorisationForm } from './authorisation-form';
import { useTicketAct } from './ticket-query';
import classes from './labour-panel.module.css';

const HOW_WORDS = { 'in-person': 'in person', phone: 'on the phone', email: 'by e-mail', signature: 'by signature' };

/** Labour in minutes and money, and the owner's word on the whole. */
export function LabourPanel({ ticket }: { ticket: TicketView }) {
  const may = useMay('set-labour') && ticket.closedAt === null;
  const { authorisation: word } = ticket;
  return (
    <>
      {may ? (
        <LabourForm key={ticket.labour.minor + ticket.labour.minutes * 1e9} ticket={ticket} />
      ) : (
        <p>{`${ticket.labour.minutes} minutes, ${sayMoney(ticket.labour.minor, ticket.currency)}`}</p>
      )}
      <h3>The owner&apos;s word</h3>
      {word ? (
        <p>
          {word.by} said yes {HOW_WORDS[word.how]} to <strong>{sayMoney(word.amountMinor, ticket.currency)}</strong>,{' '}
          {sayInstant(word.at)}
          {word.recordedBy ? `, written down by ${word.recordedBy}` : ''}.
          {word.amountMinor < ticket.totalMinor ? <strong> The total is now higher than that.</strong> : null}
        </p>
      ) : (
        <p className="soft">Not asked yet.</p>
      )}
      {may ? <AuthorisationForm key={ticket.totalMinor} ticket={ticket} /> : null}
    </>
  );
}

function LabourForm({ ticket }: { ticket: TicketView }) {
  const [minutes, setMinutes] = useState(String(ticket.labour.minutes));
  const [money, setMoney] = useState((ticket.labour.minor / 100).toFixed(2));
  const act = useTicketAct(ticket.id);
  const minor = readMoney(money);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (minor !== null) act.mutate({ method: 'PUT', path: '/labour', body: { minutes: Number(minutes) || 0, minor } });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <TextInput
        label="Minutes"
        type="number"
        min={0}
        max={10000}
        value={minutes}
        onChange={(event) => setMinutes(event.currentTarget.value)}
      />
      <TextInput
        label={`Labour in ${ticket.currency}`}
        inputMode="decimal"
        value={money}
        error={minor === null ? `“${money}” is no amount; write it as 45.50.` : null}
        onChange={(event) => setMoney(event.currentTarget.value)}
      />
      <Button type="submit" loading={act.isPending} disabled={minor === null}>
        Keep labour
      </Button>
      <ActProblem error={act.error} />
    </form>
  );
}
