import type { BuildDates } from '../../../../libs/contracts';
import { Said } from './said';
import classes from './look-at-next.module.css';

interface LookAtNextProps {
  buildDates: BuildDates;
  /** false while no paper speaks of the unit, so that no date can matter yet */
  ruled: boolean;
}

/** What would settle the build date, cheapest first; or that it does not matter. */
export function LookAtNext({ buildDates: { lookAt, needed, days, conflicts }, ruled }: LookAtNextProps) {
  if (lookAt.length > 0) {
    return (
      <>
        <h3>Look at next</h3>
        <ol className={classes.list}>
          {lookAt.map(({ kind, sentence }) => (
            <li key={kind}>
              <Said>{sentence}</Said>
            </li>
          ))}
        </ol>
      </>
    );
  }
  if (needed || !ruled || days.length === 0 || conflicts.length > 0) return null;
  return <p>The date is not needed: every possible day gives the same parts.</p>;
}
