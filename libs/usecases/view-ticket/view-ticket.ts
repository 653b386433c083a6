import type { TicketView } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { touchedPlaces } from '../note-warranty/touched-places';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { KEEP_SHELF } from '../ports/session-store';
import type { Tables } from '../ports/store';
import { partKeysOf } from '../rule-on-unit/index';
import { residentPapers } from '../view-unit/index';
import { loadAround, type WholeTicket } from './load-ticket';
import { ticketView } from './ticket-view';

/** The whole ticket as the page shows it, judged by the papers of today. */
export async function viewTicket({ store, clock }: Ports, actor: Actor, id: number): Promise<Outcome<TicketView>> {
  const [row, papers] = await Promise.all([store.tickets.byId(id), residentPapers(store, clock)]);
  const sight = sightOf(actor);
  if (!row || (sight !== null && row.locationId !== sight)) return noSuchTicket(id);
  const [before, events, notes, earlier, revisions, photos] = await Promise.all([
    store.tickets.recordsBefore(row.unitId, id),
    store.tickets.events(id),
    store.units.notes(row.unitId),
    store.tickets.earlier(row.unitId, id),
    store.estimates.ofTicket(id),
    store.photos.ofTicket(id),
  ]);
  const partIds = before.flatMap(({ partId }) => (partId === null ? [] : [partId]));
  const whole = await loadAround(store, clock, row, partIds, papers);
  const [shelf, waits, spares, touched] = await Promise.all([
    shelfWords(store, whole),
    store.waits.ofTicket(id),
    store.tickets.spares(row.unitId),
    touchedPlaces(store, whole, papers),
  ]);
  return done(ticketView(whole, { before, events, notes, earlier, revisions, photos, shelf, waits, spares, touched }));
}

/** What the shelf has of the parts that can be wanted here: those the rulings name, and those picked. */
async function shelfWords(tables: Tables, whole: WholeTicket): Promise<TicketView['shelf']> {
  const kept = (await tables.settings.read(KEEP_SHELF)) === true;
  if (!kept || whole.ticket.closedAt !== null) return { kept, parts: [] };
  const picked = whole.picks.map(({ partId }) => whole.partsById.get(partId)!.key);
  const keys = [...new Set([...partKeysOf(whole.rulings), ...picked])];
  return { kept, parts: [...(await tables.shelf.words(whole.ticket.locationId, keys))] };
}

export function noSuchTicket(id: number): Outcome<never> {
  return refused('not-found', `There is no ticket ${id} at this location.`);
}
