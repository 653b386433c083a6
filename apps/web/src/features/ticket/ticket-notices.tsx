import type { TicketView } from '../../../../../libs/contracts';
import { sayDayText } from '../../lib/say';
import classes from './ticket-notices.module.css';

/** What must be seen first: on hold, closed, cancelled, and notes that waited for this visit of the unit. */
export function TicketNotices({ ticket }: { ticket: TicketView }) {
  const closed = ticket.closedAt ? sayDayText(ticket.closedAt.slice(0, 10)) : '';
  return (
    <>
      {ticket.onHold !== null ? <p className={classes.notice}>On hold: {ticket.onHold}</p> : null}
      {ticket.cancelled !== null ? (
        <p className={classes.notice}>{`Cancelled ${closed}: ${ticket.cancelled}`}</p>
      ) : null}
      {ticket.handedOver ? <p className={classes.notice}>Handed over {closed}.</p> : null}
      {ticket.notes.map(({ sentence, source, on }) => (
        <p key={sentence} className={classes.note}>
          <strong>Noted for this visit:</strong> {sentence}{' '}
          <span className="soft">{`${source}, ${sayDayText(on)}`}</span>
        </p>
      ))}
    </>
  );
}
