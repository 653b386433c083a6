import { STAGE_NAMES, type Board, type SearchHits } from '../../contracts';
import { formatDay } from '../../day';
import { partKeyOf, readPartNumber } from '../../part-number';
import type { Actor } from '../actor';
import type { BoardFilter, SearchTerms, Tables } from '../ports/index';
import type { Ports } from '../run';

/** The open tickets of the person's location, stage by stage. */
export async function viewBoard(
  { store, clock }: Ports,
  actor: Actor,
  filter: Omit<BoardFilter, 'locationId' | 'today'>,
): Promise<Board> {
  const [benches, owners, cards] = await Promise.all([
    store.catalogue.benches(),
    store.tickets.ownersOnBoard(actor.locationId),
    store.tickets.board({ ...filter, locationId: actor.locationId, today: formatDay(clock.today()) }),
  ]);
  const stages = STAGE_NAMES.map((stage) => {
    const tickets = cards.filter((card) => card.stage === stage);
    return { stage, count: tickets.length, tickets };
  });
  return { benches: [...benches], owners: [...owners], stages };
}

const MOST_HITS = 50;

/** Tickets of the person's location by whatever was typed: number, serial, owner, phone, part number in any writing. */
export async function searchTickets({ store }: Pick<Ports, 'store'>, actor: Actor, text: string): Promise<SearchHits> {
  if (text.trim().length < 2) return [];
  return [...(await store.tickets.search(await searchTerms(store, text), actor.locationId, MOST_HITS))];
}

/** What was typed, in the forms the columns are compared in. */
export async function searchTerms({ catalogue }: Pick<Tables, 'catalogue'>, typed: string): Promise<SearchTerms> {
  const text = typed.trim();
  const digits = text.replace(/\D/g, '');
  const partKeys = (await catalogue.makers()).flatMap(({ numberRules }) => {
    const reading = readPartNumber(text, numberRules);
    return reading.ok ? [partKeyOf(numberRules.makerCode, reading.number.canonical)] : [];
  });
  return { text, squeezed: text.toUpperCase().replace(/[^A-Z0-9]/g, ''), digits, partKeys };
}
