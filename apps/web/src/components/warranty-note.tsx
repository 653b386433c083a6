import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { SetWarranty, TouchedPlace, WarrantyView } from '../../../../libs/contracts';
import { useMay } from '../lib/session';
import { ActProblem } from './act-problem';
import { DayField } from './day-field';
import { Said } from './said';
import { TouchedList } from './touched-list';
import classes from './warranty-note.module.css';

interface WarrantyNoteProps {
  warranty: WarrantyView | null;
  touched: readonly TouchedPlace[];
  busy: boolean;
  error: unknown;
  /** null where it cannot be written down */
  onSet: ((body: SetWarranty, done: () => void) => void) | null;
}

/** When the unit was bought, until when its maker stands for it, and what was fitted where. */
export function WarrantyNote({ warranty, touched, busy, error, onSet }: WarrantyNoteProps) {
  const may = useMay('set-warranty') && onSet !== null;
  const [open, setOpen] = useState(false);
  return (
    <>
      <p>{warranty ? <Said>{warranty.sentence}</Said> : 'Nobody has written down when it was bought.'}</p>
      {may && !open ? (
        <Button onClick={() => setOpen(true)}>{warranty ? 'Change the warranty' : 'Write the warranty down'}</Button>
      ) : null}
      {open ? (
        <WarrantyForm
          warranty={warranty}
          busy={busy}
          onSet={(body) => onSet?.(body, () => setOpen(false))}
          onLeave={() => setOpen(false)}
        />
      ) : null}
      <ActProblem error={error} />
      {touched.length > 0 ? <h3 className={classes.touched}>Worked on so far</h3> : null}
      <TouchedList touched={touched} />
    </>
  );
}

interface WarrantyFormProps {
  warranty: WarrantyView | null;
  busy: boolean;
  onSet: (body: SetWarranty) => void;
  onLeave: () => void;
}

function WarrantyForm({ warranty, busy, onSet, onLeave }: WarrantyFormProps) {
  const [boughtOn, setBoughtOn] = useState(warranty?.boughtOn ?? '');
  const [typed, setTyped] = useState(String(warranty?.months ?? 24));
  const months = /^\d{1,3}$/.test(typed.trim()) ? Number(typed) : 0;
  const whole = boughtOn !== '' && months >= 1 && months <= 600;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (whole) onSet({ warranty: { boughtOn, months } });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <DayField label="Bought on" value={boughtOn} onChange={setBoughtOn} />
      <TextInput
        label="Months of warranty"
        inputMode="numeric"
        className={classes.months}
        value={typed}
        error={months >= 1 && months <= 600 ? null : 'Write 1 to 600 months.'}
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      <Button type="submit" variant="filled" loading={busy} disabled={!whole}>
        Keep it
      </Button>
      {warranty ? (
        <Button variant="subtle" loading={busy} onClick={() => onSet({ warranty: null })}>
          Nobody knows
        </Button>
      ) : null}
      <Button variant="subtle" onClick={onLeave}>
        Leave it
      </Button>
    </form>
  );
}
