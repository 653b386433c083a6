import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { CallbackView, NewAttempt } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useCallbackAct } from './callbacks-query';
import { HOW_WORDS, OUTCOME_WORDS } from './callback-words';
import classes from './callbacks.module.css';

const FIRST: NewAttempt = { how: 'phone', outcome: 'reached', note: '' };

/** Writes down an attempt to reach the owner. */
export function AttemptForm({ callback }: { callback: CallbackView }) {
  const [attempt, setAttempt] = useState(FIRST);
  const act = useCallbackAct(callback);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    act.mutate({ method: 'POST', path: '/attempts', body: attempt }, { onSuccess: () => setAttempt(FIRST) });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <NativeSelect
        label="How"
        value={attempt.how}
        onChange={(event) => setAttempt({ ...attempt, how: event.currentTarget.value as NewAttempt['how'] })}
        data={Object.entries(HOW_WORDS).map(([value, label]) => ({ value, label }))}
      />
      <NativeSelect
        label="Outcome"
        value={attempt.outcome}
        onChange={(event) => setAttempt({ ...attempt, outcome: event.currentTarget.value as NewAttempt['outcome'] })}
        data={Object.entries(OUTCOME_WORDS).map(([value, label]) => ({ value, label }))}
      />
      <TextInput
        label="Note"
        value={attempt.note}
        onChange={(event) => setAttempt({ ...attempt, note: event.currentTarget.value })}
      />
      <Button type="submit" loading={act.isPending}>
        Write down the attempt
      </Button>
      <ActProblem error={act.error} />
    </form>
  );
}
