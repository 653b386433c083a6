import type { Bench, LineDetail, LineSummary, Owner, Part } from '../../contracts';
import { readPartNumber, tradeNumbersIn } from '../../part-number';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { toLineSummary, toPart, toPosition } from './to-contract';

type Reading = Pick<Ports, 'store'>;

export async function listBenches({ store }: Reading): Promise<Bench[]> {
  return [...(await store.catalogue.benches())];
}

export async function listLines({ store }: Reading): Promise<LineSummary[]> {
  return (await store.catalogue.lines()).map(toLineSummary);
}

/** One product line with its positions and sketch. */
export async function findLine({ store }: Reading, code: string): Promise<Outcome<LineDetail>> {
  const line = await store.catalogue.lineByCode(code);
  if (!line) return refused('not-found', `There is no product line '${code}'.`);
  const positions = await store.catalogue.positionsOf(line.id);
  return done({ ...toLineSummary(line), sketch: line.sketch, positions: positions.map(toPosition) });
}

const MOST_PARTS = 30;

/** Listed parts by the beginning of a number in any writing, a trade number, or a word of the name; at most thirty. */
export async function searchParts({ store }: Reading, text: string): Promise<Part[]> {
  if (text.trim().length < 2) return [];
  const makers = await store.catalogue.makers();
  const canonicals = makers.flatMap(({ numberRules }) => {
    const reading = readPartNumber(text, numberRules);
    return reading.ok ? [reading.number.canonical] : [];
  });
  const carried = await store.catalogue.partsByTradeNumbers(tradeNumbersIn(text));
  const named = await store.catalogue.searchParts([...new Set(canonicals)], text.trim(), MOST_PARTS);
  const parts = [...new Map([...carried.map(({ part }) => part), ...named].map((part) => [part.id, part])).values()];
  const numbers = await store.catalogue.tradeNumbersOf(parts.map(({ id }) => id));
  return parts.slice(0, MOST_PARTS).map((part) => toPart(part, numbers));
}

const MOST_OWNERS = 30;

/** Owners of one's location by a piece of the name, address or phone number; at most thirty. */
export async function searchOwners({ store }: Pick<Ports, 'store'>, actor: Actor, text: string): Promise<Owner[]> {
  if (text.trim().length < 2) return [];
  const found = await store.transaction((tx) => tx.owners.search(text.trim(), MOST_OWNERS, actor.locationId));
  return [...found];
}
