import { Button, Checkbox, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { CONTACT_WAYS, type CallbackView, type ContactWay, type NewAttempt } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { DayField } from '../../components/day-field';
import { todayText } from '../../lib/say';
import { useCallbackAct } from './callbacks-query';
import { HOW_WORDS, nextTryAfter, OUTCOME_WORDS, WAY_WORDS } from './callback-words';
import classes from './callbacks.module.css';

const FIRST: NewAttempt = { how: 'phone', outcome: 'reached', note: '', nextOn: null };

/** Writes down an attempt to reach the owner. */
export function AttemptForm({ callback }: { callback: CallbackView }) {
  const [attempt, setAttempt] = useState(FIRST);
  // A day the owner named stays, whatever outcome is picked after it.
  const [dayTyped, setDayTyped] = useState(false);
  const act = useCallbackAct(callback);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    act.mutate(
      { method: 'POST', path: '/attempts', body: attempt },
      {
        onSuccess: () => {
          setAttempt(FIRST);
          setDayTyped(false);
        },
      },
    );
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
        onChange={(event) => {
          const outcome = event.currentTarget.value as NewAttempt['outcome'];
          const nextOn = dayTyped ? attempt.nextOn : nextTryAfter(outcome, todayText()) || null;
          setAttempt({ ...attempt, outcome, nextOn });
        }}
        data={Object.entries(OUTCOME_WORDS).map(([value, label]) => ({ value, label }))}
      />
      <TextInput
        label="Note"
        value={attempt.note}
        onChange={(event) => setAttempt({ ...attempt, note: event.currentTarget.value })}
      />
      <DayField
        label="Next try"
        description="Empty: it stays with those to call today."
        value={attempt.nextOn ?? ''}
        onChange={(day) => {
          setDayTyped(day !== '');
          setAttempt({ ...attempt, nextOn: day || null });
        }}
      />
      <Declined
        ways={attempt.declined ?? callback.owner.declined}
        onChange={(declined) => setAttempt({ ...attempt, declined })}
      />
      <Button type="submit" loading={act.isPending}>
        Write down the attempt
      </Button>
      <ActProblem error={act.error} />
    </form>
  );
}

/** What the owner does not want, ticked as they say it; it counts for every later letter and e-mail. */
function Declined({ ways, onChange }: { ways: readonly ContactWay[]; onChange: (ways: ContactWay[]) => void }) {
  return (
    <Checkbox.Group
      label="The owner does not want"
      value={[...ways]}
      onChange={(chosen) => onChange(CONTACT_WAYS.filter((way) => chosen.includes(way)))}
    >
      <div className={classes.ways}>
        {CONTACT_WAYS.map((way) => (
          <Checkbox key={way} value={way} label={WAY_WORDS[way]} />
        ))}
      </div>
    </Checkbox.Group>
  );
}
