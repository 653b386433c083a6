import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { WrittenToOwners } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { DayField } from '../../components/day-field';
import { count, sayDayText, todayText } from '../../lib/say';
import { useMay } from '../../lib/session';
import { nextTryAfter } from './callback-words';
import { mailSetUpQuery, useWriteToOwners, type CallbackState } from './callbacks-query';
import classes from './callbacks.module.css';

interface WriteBarProps {
  state: CallbackState;
  chosen: readonly number[];
  onAll: () => void;
  onDone: () => void;
}

/** Letters with labels, or e-mails, to all that are chosen; and the list as a table for another program. */
export function WriteBar({ state, chosen, onAll, onDone }: WriteBarProps) {
  const mayWork = useMay('work-callbacks');
  const mail = useQuery({ ...mailSetUpQuery, enabled: mayWork });
  const write = useWriteToOwners();
  const [nextOn, setNextOn] = useState(() => nextTryAfter('sent', todayText()));
  if (!mayWork) return null;
  const go = (way: 'letters' | 'mails') =>
    write.mutate({ way, body: { ids: [...chosen], nextOn: nextOn || null } }, { onSuccess: onDone });
  const open = state === 'due' || state === 'later' || state === 'booked';
  const next = nextOn ? `, next try ${sayDayText(nextOn)}` : '';
  const mailReady = typeof mail.data?.server === 'string';
  return (
    <section className={classes.write} aria-label="Write to owners">
      {open ? (
        <>
          <Button onClick={onAll}>Choose all shown</Button>
          {chosen.length === 0 ? <span className="soft">Nobody is chosen yet.</span> : null}
          <DayField
            label="Next try"
            description="Empty: they stay with those to call today."
            value={nextOn}
            onChange={setNextOn}
          />
          <Button disabled={chosen.length === 0} loading={write.isPending} onClick={() => go('letters')}>
            {chosen.length === 0 ? 'Write letters' : `Write ${count(chosen.length, 'letter')}${next}`}
          </Button>
          {mailReady ? (
            <Button disabled={chosen.length === 0} loading={write.isPending} onClick={() => go('mails')}>
              {chosen.length === 0 ? 'Send e-mails' : `Send ${count(chosen.length, 'e-mail')}${next}`}
            </Button>
          ) : (
            <span className="soft">No e-mail: no mail server is set up.</span>
          )}
        </>
      ) : null}
      <a href={`/api/callbacks/list.csv?state=${state}`} download>
        This list as CSV
      </a>
      <ActProblem error={write.error} />
      {write.data ? <Written answer={write.data} way={write.variables.way} /> : null}
    </section>
  );
}

function Written({ answer: { batch, written, leftOut }, way }: { answer: WrittenToOwners; way: 'letters' | 'mails' }) {
  const what = way === 'letters' ? count(written.length, 'letter') : count(written.length, 'e-mail');
  return (
    <div role="status" className={classes.written}>
      <p>{way === 'letters' ? `${what} noted as a try.` : `${what} will be sent.`}</p>
      {batch ? (
        <p>
          <a href={`/api/callbacks/letters/${batch}/letters.pdf`} target="_blank" rel="noopener">
            Open the letters
          </a>{' '}
          <a href={`/api/callbacks/letters/${batch}/labels.pdf`} target="_blank" rel="noopener">
            Open the address labels
          </a>
        </p>
      ) : null}
      {leftOut.length > 0 ? <p>{`Not written to: ${count(leftOut.length, 'owner')}.`}</p> : null}
      <ul>
        {leftOut.map(({ id, name, why }) => (
          <li key={id}>
            {name}: {why}
          </li>
        ))}
      </ul>
    </div>
  );
}
