import { Button, Checkbox, NativeSelect } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { LookAtSheet, SheetView } from '../../../../../libs/contracts';
import { kindOf, type Column } from '../../../../../libs/sheets';
import { ActProblem } from '../../components/act-problem';
import { count } from '../../lib/say';
import { useLook } from './sheet-query';
import classes from './in-and-out.module.css';

const NONE = '';

/** Which column of the file holds what; proposed by the headings and by what the shop chose before. */
export function ColumnChoice({ sheet }: { sheet: SheetView }) {
  const [choice, setChoice] = useState<LookAtSheet>({
    mapping: sheet.mapping,
    dayOrder: sheet.dayOrder,
    publish: sheet.publish,
  });
  const look = useLook(sheet);
  const fields = Object.entries(kindOf(sheet.kind).columns);
  const chosen = fields.filter(([field]) => (choice.mapping[field] ?? null) !== null);
  const rest = fields.filter(([field, { required }]) => (choice.mapping[field] ?? null) === null && !required);
  const missing = fields.filter(([field, { required }]) => required && (choice.mapping[field] ?? null) === null);
  const choose = (field: string, at: number | null) =>
    setChoice({ ...choice, mapping: { ...choice.mapping, [field]: at } });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    look.mutate(choice);
  };
  const used = new Set(Object.values(choice.mapping));
  const unused = sheet.headings.filter((heading, at) => heading !== '' && !used.has(at));
  const field = ([name, column]: readonly [string, Column]) => (
    <FieldRow
      key={name}
      sheet={sheet}
      column={column}
      at={choice.mapping[name] ?? null}
      onChoose={(at) => choose(name, at)}
    />
  );
  return (
    <form onSubmit={submit}>
      <ul className={classes.columns}>{[...missing, ...chosen].map(field)}</ul>
      {rest.length > 0 ? (
        <details className={classes.rest}>
          <summary>{`${count(rest.length, 'field')} the file has no column for`}</summary>
          <ul className={classes.columns}>{rest.map(field)}</ul>
        </details>
      ) : null}
      {unused.length > 0 ? <p className="soft">{`Not used from the file: ${unused.join(', ')}.`}</p> : null}
      <HowRead kind={sheet.kind} choice={choice} onChoose={setChoice} />
      <Button type="submit" variant="filled" loading={look.isPending} disabled={missing.length > 0}>
        {missing.length > 0 ? `Choose the column for ${missing[0]![1].heading}` : 'Look at what it would change'}
      </Button>
      <ActProblem error={look.error} />
    </form>
  );
}

interface HowReadProps {
  kind: SheetView['kind'];
  choice: LookAtSheet;
  onChoose: (choice: LookAtSheet) => void;
}

/** What the headings cannot tell. */
function HowRead({ kind, choice, onChoose }: HowReadProps) {
  return (
    <div className={classes.hows}>
      <NativeSelect
        label="Days such as 03/04/2017 are written"
        value={choice.dayOrder ?? NONE}
        data={[
          { value: NONE, label: 'nowhere in this file' },
          { value: 'day-month-year', label: 'day first: 3 April 2017' },
          { value: 'month-day-year', label: 'month first: 4 March 2017' },
        ]}
        onChange={(event) =>
          onChoose({ ...choice, dayOrder: (event.currentTarget.value || null) as LookAtSheet['dayOrder'] })
        }
      />
      {kind === 'rules' ? (
        <Checkbox
          label="Publish the papers at once (otherwise they wait as drafts)"
          checked={choice.publish}
          onChange={(event) => onChoose({ ...choice, publish: event.currentTarget.checked })}
        />
      ) : null}
    </div>
  );
}

interface FieldRowProps {
  sheet: SheetView;
  column: Column;
  at: number | null;
  onChoose: (at: number | null) => void;
}

function FieldRow({ sheet, column, at, onChoose }: FieldRowProps) {
  const sample = at === null ? [] : sheet.sample.map((row) => row[at] ?? '').filter((text) => text !== '');
  return (
    <li className={classes.column} data-missing={(column.required && at === null) || undefined}>
      <NativeSelect
        label={column.required ? `${column.heading} (must be there)` : column.heading}
        value={at === null ? NONE : String(at)}
        data={[
          { value: NONE, label: 'no column' },
          ...sheet.headings.map((heading, n) => ({ value: String(n), label: heading || `column ${n + 1}` })),
        ]}
        onChange={(event) => onChoose(event.currentTarget.value === NONE ? null : Number(event.currentTarget.value))}
      />
      <p>
        <span className="soft">{column.says}</span>
        {sample.length > 0 ? <span className={classes.sample}>{sample.slice(0, 3).join(' · ')}</span> : null}
      </p>
    </li>
  );
}
