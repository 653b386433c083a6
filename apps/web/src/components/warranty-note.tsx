import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { SetWarranty, TouchedPlace, WarrantyView } from '../../../../libs/contracts';
import { useMay } from '../lib/session';
import { useFilled } from '../lib/use-filled';
import { DayField } from './day-field';
import { Overtaken } from './overtaken';
import { Said } from './said';
import { TouchedList } from './touched-list';
import classes from './warranty-note.module.css';

/** The unit as far as its warranty goes, in the version it was read at. */
interface Warranted {
  version: number;
  warranty: WarrantyView | null;
}

/** Writes the warranty down on that version of the unit. */
export type WriteWarranty = (body: SetWarranty, version: number, done: () => void) => void;

interface WarrantyNoteProps {
  unit: Warranted;
  touched: readonly TouchedPlace[];
  busy: boolean;
  error: unknown;
  /** null where it cannot be written down */
  onSet: WriteWarranty | null;
}

/** When the unit was bought, until when its maker stands for it, and what was fitted where. */
export function WarrantyNote({ unit, touched, busy, error, onSet }: WarrantyNoteProps) {
  const may = useMay('set-warranty') && onSet !== null;
  const [form, setForm] = useState<'not yet' | 'open' | 'left'>('not yet');
  const { warranty } = unit;
  const leave = () => setForm('left');
  return (
    <>
      <p>{warranty ? <Said>{warranty.sentence}</Said> : 'Nobody has written down when it was bought.'}</p>
      {may && form !== 'open' ? (
        // Who leaves the form is at the button again that led to it.
        <Button key={form} autoFocus={form === 'left'} onClick={() => setForm('open')}>
          {warranty ? 'Change the warranty' : 'Write the warranty down'}
        </Button>
      ) : null}
      {may && form === 'open' ? (
        <WarrantyForm unit={unit} busy={busy} error={error} onSet={onSet} onLeave={leave} />
      ) : null}
      {touched.length > 0 ? <h3 className={classes.touched}>Worked on so far</h3> : null}
      <TouchedList touched={touched} />
    </>
  );
}

interface WarrantyFormProps {
  unit: Warranted;
  busy: boolean;
  error: unknown;
  onSet: WriteWarranty;
  onLeave: () => void;
}

const typedFrom = ({ warranty }: Warranted) => ({
  boughtOn: warranty?.boughtOn ?? '',
  months: String(warranty?.months ?? 24),
});

const sameWarranty = ({ warranty: one }: Warranted, { warranty: other }: Warranted): boolean =>
  one?.boughtOn === other?.boughtOn && one?.months === other?.months;

function WarrantyForm({ unit, busy, error, onSet, onLeave }: WarrantyFormProps) {
  const filled = useFilled(unit, typedFrom, sameWarranty);
  const { typed, setTyped, version } = filled;
  const months = /^\d{1,3}$/.test(typed.months.trim()) ? Number(typed.months) : 0;
  const whole = typed.boughtOn !== '' && months >= 1 && months <= 600;
  const set = (warranty: SetWarranty['warranty']) => onSet({ warranty }, version, onLeave);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (whole) set({ boughtOn: typed.boughtOn, months });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <DayField
        label="Bought on"
        autoFocus
        value={typed.boughtOn}
        onChange={(boughtOn) => setTyped({ ...typed, boughtOn })}
      />
      <TextInput
        label="Months of warranty"
        inputMode="numeric"
        className={classes.months}
        value={typed.months}
        error={months >= 1 && months <= 600 ? null : 'Write 1 to 600 months.'}
        onChange={(event) => setTyped({ ...typed, months: event.currentTarget.value })}
      />
      <Button type="submit" variant="filled" loading={busy} disabled={!whole}>
        Keep it
      </Button>
      {unit.warranty ? (
        <Button variant="subtle" loading={busy} onClick={() => set(null)}>
          Nobody knows
        </Button>
      ) : null}
      <Button variant="subtle" onClick={onLeave}>
        Leave it
      </Button>
      <Overtaken filled={filled} error={error} />
    </form>
  );
}
