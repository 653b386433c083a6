import type { BenchLists, MoveOnBench } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Tables, TicketRow } from '../ports/index';
import type { Ports } from '../run';
import { noSuchTicket } from '../view-ticket/index';
import { holdLists, refuseOtherBench } from './put-on-list';
import { benchListsOf } from './view-bench-lists';

type Move = MoveOnBench & { readonly id: number };

/**
 * Moves a ticket on a bench's list, to another bench, or off all of them. The lists it touches are held meanwhile, and
 * the ticket must still be where the person saw it: of two people who send it to different benches one is told that
 * the other was quicker. Answers every list as it stands afterwards; a refusal for being late carries them too.
 */
export async function moveOnBench(ports: Ports, actor: Actor, move: Move): Promise<Outcome<BenchLists>> {
  const moved = await ports.store.transaction((tx) => tryMove(tx, actor, move));
  const lists = await benchListsOf(ports.store, ports.clock, actor);
  if (moved.ok) return done(lists);
  if (moved.refusal.code !== 'stale') return moved;
  return { ok: false, refusal: { ...moved.refusal, current: lists } };
}

async function tryMove(tx: Tables, actor: Actor, { id, from, to, before }: Move): Promise<Outcome<null>> {
  const ticket = await tx.tickets.byId(id);
  if (!ticket || ticket.locationId !== actor.locationId) return noSuchTicket(id);
  if (before === id) return refused('bad-input', 'A ticket cannot stand before itself.', { field: 'before' });
  const elsewhere = await refuseOtherBench(tx, to, actor.locationId, 'to');
  if (elsewhere) return elsewhere;
  await holdLists(tx, [from, to]);
  const place = await tx.benches.placeOf(id);
  if (!place) return refused('wrong-stage', `Ticket ${ticket.number} is closed and lies on no bench.`);
  if (place.benchId !== from) return late(`Ticket ${ticket.number} was moved by somebody else meanwhile.`);
  if (!(await tx.benches.put(id, to, before))) {
    return late(`The ticket that ${ticket.number} was to stand before is not on that list any more.`);
  }
  await tellMove(tx, actor, ticket, from, to);
  return done(null);
}

const late = (detail: string) => refused('stale', `${detail} Look at the lists again.`);

/** A new order on the same bench is no event of the ticket's history; another bench is. */
async function tellMove(tx: Tables, actor: Actor, ticket: TicketRow, from: number | null, to: number | null) {
  if (from !== to) {
    const codes = new Map((await tx.benches.at(actor.locationId)).map(({ id, code }) => [id, code]));
    const data = { from: ticket.bench?.code ?? null, to: to === null ? null : codes.get(to) };
    await tx.tickets.addEvents(ticket.id, [{ kind: 'bench', data, personId: actor.id }]);
  }
  await tx.live.tell('ticket', ticket.id);
}
