import type { UnitVisit } from '../../contracts';
import { unitTagCode } from '../../part-number';
import { sightOf, type Actor } from '../actor';
import { callbackView } from '../list-callbacks/list-callbacks';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { MOST_TOUCHED, touchedPlaces } from '../note-warranty/touched-places';
import { loadUnit, residentPapers, unitView } from '../view-unit/index';

const MOST_SETTLED = 20;

/** A unit that comes in again: its history, what was noted for this visit, an open callback, the evidence so far. */
export async function viewVisit({ store, clock }: Ports, actor: Actor, id: number): Promise<Outcome<UnitVisit>> {
  const here = await store.units.isAt(id, actor.locationId);
  if (!here && sightOf(actor) !== null) return noSuchUnit(id);
  const papers = await residentPapers(store, clock);
  const whole = await loadUnit(store, clock, id, papers);
  if (!whole) return noSuchUnit(id);
  const [openTicket, earlier, notes, settledNotes, callback, touched] = await Promise.all([
    store.units.openTicket(id),
    store.tickets.earlier(id, 0),
    store.units.notes(id),
    store.units.settledNotes(id, MOST_SETTLED),
    store.callbacks.openOf(id),
    store.units.touched(id, MOST_TOUCHED),
  ]);
  const parts = await papers.partsByIds([...new Set(touched.map(({ partId }) => partId))]);
  return done({
    unit: unitView(whole),
    here,
    touched: touchedPlaces(whole, touched, new Map(parts.map((part) => [part.id, part]))),
    code: unitTagCode(id),
    openTicket,
    earlierTickets: earlier.filter((ticket) => ticket.id !== openTicket?.id),
    notes: [...notes],
    settledNotes: [...settledNotes],
    callback: callback && { id: callback.id, urgent: callback.urgent, say: callbackView(callback).say },
  });
}

const noSuchUnit = (id: number) => refused('not-found', `There is no unit ${id} here.`);
