import type { TicketView } from '../../../../../libs/contracts';
import { UnitNotes } from '../../components/unit-notes';
import { sayDayText } from '../../lib/say';
import { useArrival } from '../../lib/use-arrival';
import { useUnitAct } from './ticket-query';
import classes from './ticket-notices.module.css';

/** What must be seen first: on hold, closed, cancelled, and notes that waited for this visit of the unit. */
export function TicketNotices({ ticket }: { ticket: TicketView }) {
  const act = useUnitAct(ticket.id);
  const end = useArrival<HTMLParagraphElement>(ticket.handedOver);
  const closed = ticket.closedAt ? sayDayText(ticket.closedAt.slice(0, 10)) : '';
  return (
    <>
      {ticket.onHold !== null ? <p className={classes.notice}>On hold: {ticket.onHold}</p> : null}
      {ticket.cancelled !== null ? (
        <p className={classes.notice}>{`Cancelled ${closed}: ${ticket.cancelled}`}</p>
      ) : null}
      {ticket.handedOver ? (
        <p ref={end} tabIndex={-1} className={classes.notice}>
          Handed over {closed}.
        </p>
      ) : null}
      <UnitNotes
        notes={ticket.notes}
        words="Noted for this visit:"
        busy={act.isPending}
        error={act.error}
        onSettle={
          ticket.closedAt === null
            ? (id, reason, onSuccess) =>
                act.mutate({ method: 'POST', path: `/notes/${id}/settle`, body: { reason } }, { onSuccess })
            : null
        }
      />
    </>
  );
}
