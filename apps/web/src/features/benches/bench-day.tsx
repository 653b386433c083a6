import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { ActProblem } from '../../components/act-problem';
import { sayMinutes } from '../../lib/minutes';
import { useBenchDay } from './bench-lists-query';
import classes from './benches.module.css';

/** How many minutes of work a day at the bench takes, folded away until it is to be changed. */
export function BenchDay({ id, version, dayMinutes }: { id: number; version: number; dayMinutes: number }) {
  const [open, setOpen] = useState(false);
  const [typed, setTyped] = useState(String(dayMinutes));
  const act = useBenchDay();
  const minutes = /^\d{1,4}$/.test(typed.trim()) ? Number(typed) : NaN;
  const wrong = Number.isNaN(minutes) || minutes > 1_440;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!wrong) act.mutate({ id, version, dayMinutes: minutes }, { onSuccess: () => setOpen(false) });
  };
  if (!open) {
    return (
      <Button variant="subtle" size="compact-md" className={classes.day} onClick={() => setOpen(true)}>
        Change the day
      </Button>
    );
  }
  return (
    <form onSubmit={submit} className={classes.dayForm}>
      <TextInput
        label="Minutes of a day"
        inputMode="numeric"
        value={typed}
        error={wrong ? 'Write 0 to 1440 minutes.' : null}
        description={wrong ? null : sayMinutes(minutes)}
        onChange={(event) => setTyped(event.currentTarget.value)}
        data-autofocus
      />
      <Button type="submit" loading={act.isPending} disabled={wrong}>
        Keep it
      </Button>
      <ActProblem error={act.error} />
    </form>
  );
}
