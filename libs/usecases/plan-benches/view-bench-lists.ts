import type { BenchLists } from '../../contracts';
import { formatDay } from '../../day';
import type { Actor } from '../actor';
import type { Ports } from '../run';
import type { Clock } from '../clock';
import type { Tables } from '../ports/index';
import { benchLoad } from './bench-load';

/** Every bench of the person's location with its list and its load, and the open tickets that are on none. */
export function viewBenchLists({ store, clock }: Ports, actor: Actor): Promise<BenchLists> {
  return benchListsOf(store, clock, actor);
}

/** The same as one transaction sees it. A ticket that is on a bench of another location is shown as on none. */
export async function benchListsOf(
  { benches }: Pick<Tables, 'benches'>,
  clock: Clock,
  { locationId }: Actor,
): Promise<BenchLists> {
  const [rows, tickets] = await Promise.all([benches.at(locationId), benches.tickets(locationId)]);
  const here = new Set(rows.map(({ id }) => id));
  return {
    today: formatDay(clock.today()),
    benches: rows.map(({ dayMinutes, ...bench }) => {
      const listed = tickets.filter((ticket) => ticket.bench?.id === bench.id);
      return { ...bench, load: benchLoad(dayMinutes, listed), tickets: listed };
    }),
    unplaced: tickets.filter(({ bench }) => bench === null || !here.has(bench.id)),
  };
}
