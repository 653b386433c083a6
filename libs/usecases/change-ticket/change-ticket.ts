import type { TicketView } from '../../contracts';
import { mayWork } from '../../ticket';
import type { Actor } from '../actor';
import { refused, type Outcome, type Refusal } from '../outcome';
import type { NewEvent, Tables, TicketPatch } from '../ports/index';
import { loadRulebook } from '../rulebook';
import type { Ports } from '../run';
import { closedHow, loadTicket, noSuchTicket, viewTicket, type WholeTicket } from '../view-ticket/index';

/** Which ticket a change is made on, and the version the person had before their eyes. */
export interface OnTicket {
  readonly id: number;
  readonly version: number;
}

/** What a change does: columns of the ticket, events of its history, and whatever else it writes before them. */
export interface TicketChange {
  readonly patch?: TicketPatch;
  readonly events: readonly NewEvent[];
  /** Runs after the ticket's columns were written, in the same transaction. */
  readonly after?: (tx: Tables) => Promise<void>;
}

type Plan = (whole: WholeTicket, tx: Tables) => Promise<Outcome<TicketChange>> | Outcome<TicketChange>;

/** Thrown to leave a transaction without a trace; caught by the one who opened it. */
class LeaveWithRefusal extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.detail);
  }
}

/**
 * Every change of a ticket goes this way: one transaction reads the ticket whole, asks the plan what is to be done,
 * compares and raises the version in one statement, writes, and adds to the history. A stale version answers with the
 * present state. Answers the ticket as it stands afterwards.
 */
export async function changeTicket(
  ports: Ports,
  actor: Actor,
  { id, version }: OnTicket,
  plan: Plan,
): Promise<Outcome<TicketView>> {
  const refusal = await ports.store
    .transaction(async (tx) => {
      const whole = await readLocked(tx, ports, id, actor);
      if (!whole) return noSuchTicket(id);
      if (whole.ticket.version !== version) return stale(whole.ticket.number);
      const stopped = mayWork({ onHold: false, closed: closedHow(whole) });
      if (stopped) return refused('wrong-stage', stopped.sentence);
      const planned = await plan(whole, tx);
      if (!planned.ok) throw new LeaveWithRefusal(planned.refusal);
      await write(tx, whole, version, planned.value);
      return null;
    })
    .catch(asRefusal);
  if (refusal && !refusal.ok) return withPresent(ports, actor, id, refusal);
  return viewTicket(ports, actor, id);
}

/**
 * Reads the ticket with its unit's row held, so that what a gate has seen is still so when the ticket moves. The
 * rulebook is held before the unit, in the order in which rechecks do it too: no two can wait for each other.
 */
async function readLocked(tx: Tables, { clock }: Ports, id: number, actor: Actor): Promise<WholeTicket | null> {
  const row = await tx.tickets.byId(id);
  if (!row) return null;
  await loadRulebook(tx, clock);
  await tx.units.lock(row.unitId);
  return loadTicket(tx, clock, id, actor.locationId);
}

async function write(tx: Tables, whole: WholeTicket, version: number, change: TicketChange): Promise<void> {
  const { id, number } = whole.ticket;
  const claimed = await tx.tickets.change(id, version, change.patch ?? {});
  if (!claimed) throw new LeaveWithRefusal(staleRefusal(number));
  await change.after?.(tx);
  await tx.tickets.addEvents(id, change.events);
  await tx.live.tell('ticket', id);
}

const staleRefusal = (number: string): Refusal => ({
  code: 'stale',
  detail: `Ticket ${number} was changed by somebody else meanwhile; look at it again.`,
});

function stale(number: string): Outcome<never> {
  return { ok: false, refusal: staleRefusal(number) };
}

function asRefusal(error: unknown): Outcome<never> {
  if (error instanceof LeaveWithRefusal) return { ok: false, refusal: error.refusal };
  throw error;
}

/** A stale version is answered with the ticket as it stands now. */
async function withPresent(
  ports: Ports,
  actor: Actor,
  id: number,
  refusal: Extract<Outcome<never>, { ok: false }>,
): Promise<Outcome<never>> {
  if (refusal.refusal.code !== 'stale') return refusal;
  const present = await viewTicket(ports, actor, id);
  return present.ok ? { ok: false, refusal: { ...refusal.refusal, current: present.value } } : refusal;
}
