import type { MoveStage, TicketView } from '../../contracts';
import { mayMove, stageBefore, type Destination, type NotNow } from '../../ticket';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket, type TicketChange } from '../change-ticket/index';
import { nextRevision, writtenDown } from '../estimate-work/estimate-as-it-stands';
import { picksChanged } from '../keep-shelf/index';
import type { Tables } from '../ports/index';
import { done, refused, type Outcome, type RefusalCode } from '../outcome';
import { settleBooked } from '../settle-callback/settle-booked';
import type { Ports } from '../run';
import { gateFacts, type WholeTicket } from '../view-ticket/index';

/** Moves a ticket forward through its gate, back with a reason, or out of the door. */
export function moveStage(
  ports: Ports,
  actor: Actor,
  { to, reason, ...on }: OnTicket & MoveStage,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, async (whole, tx) => {
    const notNow = mayMove(gateFacts(whole), to, reason ?? null);
    if (notNow) return asRefusal(notNow);
    return done(to === 'handed-over' ? await handOver(ports, actor, whole, tx) : step(actor, whole, to, reason));
  });
}

const CODES: Readonly<Record<NotNow['code'], RefusalCode>> = {
  closed: 'wrong-stage',
  'on-hold': 'wrong-stage',
  'not-on-hold': 'wrong-stage',
  'no-such-step': 'wrong-stage',
  'reason-missing': 'bad-input',
  'gate-closed': 'gate-closed',
};

function asRefusal(notNow: NotNow): Outcome<never> {
  if (notNow.code === 'gate-closed') {
    return refused('gate-closed', notNow.sentence, { missing: notNow.missing.map(({ sentence }) => sentence) });
  }
  return refused(CODES[notNow.code], notNow.sentence, notNow.code === 'reason-missing' ? { field: 'reason' } : {});
}

function step(
  actor: Actor,
  { ticket }: WholeTicket,
  to: Exclude<Destination, 'handed-over'>,
  reason?: string,
): TicketChange {
  const back = to === stageBefore(ticket.stage);
  return {
    patch: { stage: to },
    events: [
      {
        kind: back ? 'moved-back' : 'moved',
        data: { from: ticket.stage, to, ...(reason === undefined ? {} : { reason }) },
        personId: actor.id,
      },
    ],
  };
}

/**
 * The unit leaves: spares go along, the ticket closes with the estimate as it stands written down, and what the unit
 * holds is judged as that of a unit outside.
 */
async function handOver({ clock }: Ports, actor: Actor, whole: WholeTicket, tx: Tables): Promise<TicketChange> {
  const { ticket, unit, picks } = whole;
  const last = nextRevision(whole, await tx.estimates.ofTicket(ticket.id));
  const spares = picks.filter(({ purpose, state }) => purpose === 'spare' && state === 'picked');
  return {
    patch: { closedAt: clock.now(), handedOver: true },
    events: [
      ...(last ? [writtenDown(last, actor)] : []),
      { kind: 'handed-over', data: { spares: spares.length }, personId: actor.id },
    ],
    after: async (tx) => {
      if (last) await tx.estimates.add(ticket.id, last, actor.id);
      await tx.tickets.setPickStates(
        ticket.id,
        spares.map(({ id }) => ({ id, state: 'given' })),
      );
      await settleBooked(tx, clock, unit.id, ticket.id);
      await tx.waits.endFor(ticket.id, null);
      await picksChanged(tx, clock, ticket, actor.id);
    },
  };
}
