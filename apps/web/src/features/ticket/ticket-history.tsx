import { Link } from '@tanstack/react-router';
import type { TicketView } from '../../../../../libs/contracts';
import { sayDayText, sayInstant } from '../../lib/say';
import { useMay } from '../../lib/session';
import { Said } from '../../components/said';
import classes from './ticket-history.module.css';

/** Who did what and when, newest first; then the unit's earlier tickets. */
export function TicketHistory({ ticket }: { ticket: TicketView }) {
  const newestFirst = [...ticket.history].sort((a, b) => b.id - a.id);
  const maySeeTrail = useMay('see-trail');
  return (
    <>
      {maySeeTrail ? (
        <p className="no-print">
          <Link to="/units/$id/trail" params={{ id: ticket.unit.id }}>
            Everything done about this unit
          </Link>
        </p>
      ) : null}
      <ol className={classes.events}>
        {newestFirst.map((event) => (
          <li key={event.id}>
            <span className="num">{sayInstant(event.at)}</span>
            <span>
              <Said>{event.sentence}</Said> <span className="soft">{event.by ? event.by.name : 'by itself'}</span>
            </span>
          </li>
        ))}
      </ol>
      {ticket.earlierTickets.length > 0 ? <h3>Earlier tickets of this unit</h3> : null}
      <ul>
        {ticket.earlierTickets.map(({ id, number, closedOn, complaint }) => (
          <li key={id}>
            <Link to="/tickets/$id" params={{ id }}>
              {number}
            </Link>{' '}
            {closedOn ? sayDayText(closedOn) : 'still open'} <span className="soft">{complaint}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
