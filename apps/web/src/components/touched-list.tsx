import type { TouchedPlace } from '../../../../libs/contracts';
import { sayDayText } from '../lib/say';
import { Said } from './said';

/** Places that were worked on, each with the part it was left with, and which paper speaks against that part today. */
export function TouchedList({ touched }: { touched: readonly TouchedPlace[] }) {
  return (
    <ul>
      {touched.map(({ where, part, ticket, on, barred }) => (
        <li key={`${ticket.id} ${where}`}>
          {where}: <span className="num">{part.number}</span> {part.name},{' '}
          <span className="soft">
            {sayDayText(on)}, <span className="num">{ticket.number}</span>
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
