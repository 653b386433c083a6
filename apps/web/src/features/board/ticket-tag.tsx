import { Link } from '@tanstack/react-router';
import type { TicketCard } from '../../../../../libs/contracts';
import { VerdictMark } from '../../components/verdict-mark';
import { useDrag } from '../../lib/drag';
import { count, sayDayText, todayText } from '../../lib/say';
import classes from './ticket-tag.module.css';

/** A ticket as the paper tag that hangs on the unit. */
export function TicketTag({ ticket, drags }: { ticket: TicketCard; drags: boolean }) {
  const tag = useDrag<HTMLAnchorElement>('stage-ticket', ticket.id, drags);
  const late = ticket.promisedOn !== null && ticket.promisedOn < todayText();
  return (
    <Link
      ref={tag}
      to="/tickets/$id"
      params={{ id: ticket.id }}
      className={classes.tag}
      data-hold={ticket.onHold !== null}
    >
      <span className={classes.top}>
        <span className={classes.number}>{ticket.number}</span>
        {ticket.bench ? (
          <span className={classes.bench}>{ticket.bench.code}</span>
        ) : (
          <span className="soft">no bench</span>
        )}
      </span>
      <span className={classes.unit}>{ticket.unit}</span>
      <span className={classes.serial}>{ticket.serial ?? 'no serial'}</span>
      <span className={classes.owner}>{ticket.owner}</span>
      {ticket.promisedOn ? (
        <span className={late ? classes.late : 'soft'}>
          {late ? 'Late, promised ' : 'Promised '}
          {sayDayText(ticket.promisedOn)}
        </span>
      ) : null}
      {ticket.onHold !== null ? <span className={classes.hold}>On hold: {ticket.onHold}</span> : null}
      {ticket.waits ? (
        <span className={ticket.waits.here ? classes.here : 'soft'}>
          {ticket.waits.here ? 'Came in: ' : 'Waits for '}
          <span className="num">{ticket.waits.parts.join(', ')}</span>
        </span>
      ) : null}
      {ticket.worst || ticket.openFlags > 0 ? (
        <span className={classes.foot}>
          {ticket.worst ? <VerdictMark verdict={ticket.worst} /> : null}
          {ticket.openFlags > 0 ? <span>{count(ticket.openFlags, 'flag')}</span> : null}
        </span>
      ) : null}
    </Link>
  );
}
