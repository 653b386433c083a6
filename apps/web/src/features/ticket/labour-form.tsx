import { Button, NativeSelect, TextInput } from '@mantine/core';
import type { FormEvent } from 'react';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useDraftOver } from '../../lib/draft';
import { readMoney } from '../../lib/say';
import { emptyLine, readLines, typedLines, withMinutes, type TypedLine } from './labour-lines-typed';
import { useTicketAct } from './ticket-query';
import classes from './labour-panel.module.css';

const KINDS = [
  { value: 'labour', label: 'Labour' },
  { value: 'other', label: 'Other' },
];

/** Labour and whatever else is asked for besides parts, line by line. */
export function LabourForm({ ticket }: { ticket: TicketView }) {
  const [lines, setLines, forget] = useDraftOver(`ticket.${ticket.id}.labour`, typedLines(ticket.labour.lines));
  const act = useTicketAct(ticket.id);
  const read = readLines(lines);
  const put = (index: number, line: TypedLine) => setLines(lines.map((one, at) => (at === index ? line : one)));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (read) act.mutate({ method: 'PUT', path: '/labour', body: { lines: read } }, { onSuccess: forget });
  };
  return (
    <form onSubmit={submit}>
      {lines.map((line, index) => (
        <Line
          key={index}
          line={line}
          suffix={index === 0 ? '' : `, line ${index + 1}`}
          ticket={ticket}
          onChange={(next) => put(index, next)}
          onRemove={lines.length > 1 ? () => setLines(lines.filter((_, at) => at !== index)) : null}
        />
      ))}
      <div className={classes.acts}>
        <Button onClick={() => setLines([...lines, { ...emptyLine(), what: '' }])}>One more line</Button>
        <Button type="submit" loading={act.isPending} disabled={!read}>
          Keep labour
        </Button>
      </div>
      <ActProblem error={act.error} />
    </form>
  );
}

interface LineProps {
  line: TypedLine;
  /** parts one line's labels from another's */
  suffix: string;
  ticket: TicketView;
  onChange: (line: TypedLine) => void;
  onRemove: (() => void) | null;
}

function Line({ line, suffix, ticket, onChange, onRemove }: LineProps) {
  const { currency, estimate } = ticket;
  const noMoney = line.money.trim() !== '' && readMoney(line.money) === null;
  return (
    <div className={classes.form}>
      <NativeSelect
        label={`Kind${suffix}`}
        data={KINDS}
        value={line.kind}
        className={classes.kind}
        onChange={({ currentTarget: { value } }) => onChange({ ...line, kind: value === 'other' ? 'other' : 'labour' })}
      />
      <TextInput
        label={`What is done${suffix}`}
        value={line.what}
        maxLength={200}
        onChange={(event) => onChange({ ...line, what: event.currentTarget.value })}
      />
      {line.kind === 'labour' ? (
        <TextInput
          label={`Minutes${suffix}`}
          inputMode="numeric"
          value={line.minutes}
          className={classes.short}
          onChange={(event) => onChange(withMinutes(line, event.currentTarget.value, estimate.hourMinor))}
        />
      ) : null}
      <TextInput
        label={line.kind === 'labour' ? `Labour in ${currency}${suffix}` : `Amount in ${currency}${suffix}`}
        inputMode="decimal"
        value={line.money}
        className={classes.short}
        error={noMoney ? `“${line.money}” is no amount; write it as 45.50.` : null}
        onChange={(event) => onChange({ ...line, money: event.currentTarget.value })}
      />
      {onRemove ? (
        <Button className={classes.remove} aria-label={`Take out${suffix || ', line 1'}`} onClick={onRemove}>
          Take out
        </Button>
      ) : null}
    </div>
  );
}
