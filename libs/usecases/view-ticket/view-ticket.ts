import type { TicketView } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { MOST_TOUCHED, touchedPlaces } from '../note-warranty/touched-places';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { KEEP_SHELF } from '../ports/session-store';
import type { Tables } from '../ports/store';
import type { WholeTicketRows } from '../ports/whole-ticket';
import { partKeysOf } from '../rule-on-unit/index';
import { papersAt } from '../view-unit/index';
import { wholeTicket, type WholeTicket } from './load-ticket';
import { ticketView } from './ticket-view';

/** The whole ticket as the page shows it, judged by the papers of today. */
export async function viewTicket({ store, clock }: Ports, actor: Actor, id: number): Promise<Outcome<TicketView>> {
  const rows = await store.tickets.page(id, { touched: MOST_TOUCHED });
  const sight = sightOf(actor);
  if (!rows || (sight !== null && rows.ticket.locationId !== sight)) return noSuchTicket(id);
  const papers = await papersAt(store, clock, rows.mark);
  const beside = [...rows.before, ...rows.touched].flatMap(({ partId }) => partId ?? []);
  const whole = await wholeTicket(rows, papers, clock.today(), beside);
  const shelf = await shelfWords(store, whole, rows);
  return done(ticketView(whole, { ...rows, shelf, touched: touchedPlaces(whole, rows.touched, whole.partsById) }));
}

/** What the shelf has of the parts that can be wanted here: those the rulings name, and those picked. */
async function shelfWords(
  tables: Pick<Tables, 'shelf'>,
  whole: WholeTicket,
  { settings }: WholeTicketRows,
): Promise<TicketView['shelf']> {
  const kept = settings[KEEP_SHELF] === true;
  if (!kept || whole.ticket.closedAt !== null) return { kept, parts: [] };
  const picked = whole.picks.map(({ partId }) => whole.partsById.get(partId)!.key);
  const keys = [...new Set([...partKeysOf(whole.rulings), ...picked])];
  return { kept, parts: [...(await tables.shelf.words(whole.ticket.locationId, keys))] };
}

export function noSuchTicket(id: number): Outcome<never> {
  return refused('not-found', `There is no ticket ${id} at this location.`);
}
