import type { TicketView } from '../../contracts';
import { mayCancel, mayHold, mayResume } from '../../ticket';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { picksChanged } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import type { Tables } from '../ports/store';
import { closedHow, type WholeTicket } from '../view-ticket/index';

/** Puts a ticket on hold with a reason; null resumes it. */
export function holdTicket(
  ports: Ports,
  actor: Actor,
  { reason, ...on }: OnTicket & { reason: string | null },
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, (whole) => {
    const standing = { onHold: whole.ticket.holdReason !== null, closed: closedHow(whole) };
    const notNow = reason === null ? mayResume(standing) : mayHold(standing);
    if (notNow) return refused('already-done', notNow.sentence);
    const event = reason === null ? { kind: 'resumed', data: {} } : { kind: 'held', data: { reason } };
    return done({ patch: { holdReason: reason }, events: [{ ...event, personId: actor.id }] });
  });
}

/** Ends a ticket without a hand-over, with a reason. It stays on record; what was picked and not fitted goes back. */
export function cancelTicket(
  ports: Ports,
  actor: Actor,
  { reason, ...on }: OnTicket & { reason: string },
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, (whole) => {
    const notNow = mayCancel({ onHold: whole.ticket.holdReason !== null, closed: closedHow(whole) });
    if (notNow) return refused('wrong-stage', notNow.sentence);
    return done({
      patch: { cancelReason: reason, closedAt: ports.clock.now() },
      events: [{ kind: 'cancelled', data: { reason }, personId: actor.id }],
      after: (tx) => putBack(tx, ports, actor, whole),
    });
  });
}

async function putBack(tx: Tables, { clock }: Ports, actor: Actor, { ticket, picks }: WholeTicket): Promise<void> {
  const onBench = picks.filter(({ state }) => state === 'picked');
  const returned = onBench.map(({ id }) => ({ id, state: 'returned' as const }));
  await tx.tickets.setPickStates(ticket.id, returned);
  await tx.waits.endFor(ticket.id, null);
  await picksChanged(tx, clock, ticket, actor.id);
}
