import type { TicketView } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { loadAround } from './load-ticket';
import { ticketView } from './ticket-view';

/** The whole ticket as the page shows it, judged by the papers of today. */
export async function viewTicket({ store, clock }: Ports, actor: Actor, id: number): Promise<Outcome<TicketView>> {
  const row = await store.tickets.byId(id);
  const sight = sightOf(actor);
  if (!row || (sight !== null && row.locationId !== sight)) return noSuchTicket(id);
  const [before, events, notes, earlier, revisions] = await Promise.all([
    store.tickets.recordsBefore(row.unitId, id),
    store.tickets.events(id),
    store.units.notes(row.unitId),
    store.tickets.earlier(row.unitId, id),
    store.estimates.ofTicket(id),
  ]);
  const partIds = before.flatMap(({ partId }) => (partId === null ? [] : [partId]));
  const whole = await loadAround(store, clock, row, partIds);
  return done(ticketView(whole, { before, events, notes, earlier, revisions }));
}

export function noSuchTicket(id: number): Outcome<never> {
  return refused('not-found', `There is no ticket ${id} at this location.`);
}
