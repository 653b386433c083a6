import { promisedFilter, type PromisedFilter } from '../../../../libs/contracts';
import { parseDay } from '../../../../libs/day';

/** Numbers of the shop's rows stand in addresses; anything else is no page of ours. */
export const idParams = {
  parse: ({ id }: { id: string }) => ({ id: Number(id) }),
  stringify: ({ id }: { id: number }) => ({ id: String(id) }),
};

/** What stands in the address as text; anything else is left out. */
export const text = (value: unknown): string | undefined =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : undefined;

/** A day that exists; anything else is left out. */
export const dayIn = (value: unknown): string | undefined =>
  typeof value === 'string' && parseDay(value) !== null ? value : undefined;

/** By the papers of which day, as known on which day; anything that is no day is left out. */
export function daysOf(given: Record<string, unknown>): { inForceOn?: string; knownOn?: string } {
  return { inForceOn: dayIn(given['inForceOn']), knownOn: dayIn(given['knownOn']) };
}

type BoardSearch = { bench?: string; owner?: string; promised?: PromisedFilter; flagged?: 'yes'; q?: string };

/** Which tickets the board shows; a filter that there is not is left out. */
export const boardSearch = (search: Record<string, unknown>): BoardSearch => ({
  bench: text(search['bench']),
  owner: text(search['owner']),
  promised: promisedFilter.options.find((one) => one === search['promised']),
  flagged: search['flagged'] === 'yes' ? 'yes' : undefined,
  q: text(search['q']),
});
