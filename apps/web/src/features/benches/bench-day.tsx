import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { Overtaken } from '../../components/overtaken';
import { sayMinutes } from '../../lib/minutes';
import { useFilled } from '../../lib/use-filled';
import { useBenchDay } from './bench-lists-query';
import classes from './benches.module.css';

const minutesOf = ({ dayMinutes }: { dayMinutes: number }): string => String(dayMinutes);

/** How many minutes of work a day at the bench takes, folded away until it is to be changed. */
export function BenchDay({ id, version, dayMinutes }: { id: number; version: number; dayMinutes: number }) {
  const [open, setOpen] = useState(false);
  const filled = useFilled({ version, dayMinutes }, minutesOf);
  const { typed, setTyped } = filled;
  const act = useBenchDay();
  const minutes = /^\d{1,4}$/.test(typed.trim()) ? Number(typed) : NaN;
  const wrong = Number.isNaN(minutes) || minutes > 1_440;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!wrong) act.mutate({ id, version: filled.version, dayMinutes: minutes }, { onSuccess: () => setOpen(false) });
  };
  const begin = () => {
    filled.fill({ version, dayMinutes });
    setOpen(true);
  };
  if (!open) {
    return (
      <Button variant="subtle" size="compact-md" className={classes.day} onClick={begin}>
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
      <Overtaken filled={filled} error={act.error} />
    </form>
  );
}
