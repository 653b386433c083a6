import { Link } from '@tanstack/react-router';
import type { BenchJob, MyBench } from '../../../../../libs/contracts';
import { EmptyView } from '../../components/empty-view';
import { Promised } from '../../components/promised';
import { VerdictMark } from '../../components/verdict-mark';
import { sayMinutes } from '../../lib/minutes';
import { count, STAGE_WORDS } from '../../lib/say';
import classes from './my-bench.module.css';

/** What is on the bench in its order; first of all what was promised for today. */
export function BenchJobs({ mine }: { mine: MyBench }) {
  const due = mine.jobs.filter(({ promisedOn }) => promisedOn !== null && promisedOn <= mine.today);
  if (mine.jobs.length === 0) {
    return (
      <EmptyView title="Nothing on this bench">
        <p>What comes in without a bench waits on the board.</p>
      </EmptyView>
    );
  }
  return (
    <>
      <section aria-labelledby="due" className={classes.due}>
        <h2 id="due">Promised for today</h2>
        {due.length === 0 ? <p className="soft">Nothing is due today.</p> : null}
        <ul>
          {due.map((job) => (
            <li key={job.id}>
              <Link to="/tickets/$id" params={{ id: job.id }} className={classes.number}>
                {job.number}
              </Link>{' '}
              {job.unit}, <Promised on={job.promisedOn} today={mine.today} />
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="list">
        <h2 id="list">On the bench, in this order</h2>
        <ol className={classes.jobs}>
          {mine.jobs.map((job) => (
            <Job key={job.id} job={job} today={mine.today} />
          ))}
        </ol>
      </section>
    </>
  );
}

function Job({ job, today }: { job: BenchJob; today: string }) {
  return (
    <li className={classes.job}>
      <Link to="/tickets/$id" params={{ id: job.id }} className={classes.head} data-hold={job.onHold !== null}>
        <span className={classes.number}>{job.number}</span>
        <span>
          <strong>{job.unit}</strong> <span className="num">{job.serial ?? 'no serial'}</span>
        </span>
        <span>{job.owner}</span>
        <Promised on={job.promisedOn} today={today} />
      </Link>
      <p className={classes.state}>
        <strong>{STAGE_WORDS[job.stage]}</strong>
        {job.labourMinutes > 0 ? <span>{sayMinutes(job.labourMinutes)}</span> : null}
        {job.worst ? <VerdictMark verdict={job.worst} /> : null}
        {job.openFlags > 0 ? <span>{count(job.openFlags, 'open flag')}</span> : null}
        {job.onHold !== null ? <span className={classes.hold}>On hold: {job.onHold}</span> : null}
      </p>
      <Missing sentences={job.missing} />
    </li>
  );
}

/** So many are written out; the others are a number. */
const SHOWN = 3;

function Missing({ sentences }: { sentences: readonly string[] }) {
  if (sentences.length === 0) return <p className="soft">Nothing is missing for the next stage.</p>;
  const more = sentences.length - SHOWN;
  return (
    <ul className={classes.missing} aria-label="Missing for the next stage">
      {sentences.slice(0, SHOWN).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
      {more > 0 ? <li className="soft">{`and ${more} more`}</li> : null}
    </ul>
  );
}
