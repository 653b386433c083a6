import type { TouchedPlace } from '../../../../libs/contracts';
import { sayDayText } from '../lib/say';
import { Said } from './said';
import classes from './touched-list.module.css';

/** Places that were worked on, each with the part it was left with, and which paper speaks against that part today. */
export function TouchedList({ touched }: { touched: readonly TouchedPlace[] }) {
  return (
    <ul>
      {touched.map(({ where, part, ticket, on, barred }) => (
        <li key={`${ticket.id} ${where}`} className={classes.row}>
          {where}: <span className={`num ${classes.number}`}>{part.number}</span> {part.name},{' '}
          <span className="soft">
            {sayDayText(on)}, <span className={`num ${classes.number}`}>{ticket.number}</span>
          </span>
          {barred === null ? null : (
            <strong>
              {' '}
              <Said>{`Not for this unit: ${barred}.`}</Said>
            </strong>
          )}
        </li>
      ))}
    </ul>
  );
}
