import type { RecheckView } from '../../../../../libs/contracts';
import { count, sayNumber } from '../../lib/say';
import classes from './bulletins.module.css';

/** How far the recheck has come, and what it has changed so far. */
export function RecheckProgress({ recheck }: { recheck: RecheckView }) {
  const done = recheck.state === 'done';
  const pace = recheck.perSecond ? `, ${sayNumber(Math.round(recheck.perSecond))} a second` : '';
  const left = recheck.secondsLeft ? `, about ${count(Math.ceil(recheck.secondsLeft), 'second')} left` : '';
  return (
    <section aria-labelledby="recheck" className={classes.recheck}>
      <h2 id="recheck">{done ? 'Recheck done' : 'Recheck under way'}</h2>
      <progress
        max={Math.max(1, recheck.planned)}
        value={done ? Math.max(1, recheck.planned) : recheck.judged}
        aria-label="Installs judged"
      />
      <p role="status">
        {`${sayNumber(recheck.judged)} of ${sayNumber(recheck.planned)} installs judged`}
        {done ? '.' : `${pace}${left}.`}
      </p>
      <ul className={classes.counts}>
        <Count many={recheck.changed} words="verdicts changed" />
        <Count many={recheck.callbacksOpened} words="callbacks opened" />
        <Count many={recheck.callbacksClosed} words="callbacks closed" />
        <Count many={recheck.flagsRaised} words="flags raised" />
        <Count many={recheck.flagsCleared} words="flags cleared" />
        {recheck.setAside > 0 ? <Count many={recheck.setAside} words="set aside" /> : null}
      </ul>
      {recheck.setAsideWhy.map((why) => (
        <p key={why}>{why}</p>
      ))}
    </section>
  );
}

function Count({ many, words }: { many: number; words: string }) {
  return (
    <li>
      <span className={classes.big}>{sayNumber(many)}</span> {words}
    </li>
  );
}
