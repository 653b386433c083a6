import { choosePart, partReadings } from '../../part-number';
import { done, refused, type Outcome } from '../outcome';
import type { MakerRow, PartRow, Tables } from '../ports/index';
import { partByTradeNumber } from './part-by-trade-number';

/** A part as it was typed or scanned, and how many are in the bag it came in. */
export interface PartTextReading {
  readonly part: PartRow;
  readonly pack: number;
}

/**
 * Reads typed part numbers by the makers' own rules: first as the unit's maker writes them, then as any other maker of
 * the catalogue does, then as the trade number of its bag. A number that no catalogue lists becomes an unlisted part of the unit's maker, so that the
 * record says what was read. All texts are looked up together; the answer maps each text to its part or its problem.
 */
export async function readPartTexts(
  tables: Tables,
  texts: readonly string[],
  makerCode: string | null,
): Promise<ReadonlyMap<string, Outcome<PartTextReading>>> {
  const wanted = [...new Set(texts)];
  if (wanted.length === 0) return new Map();
  const makers = await tables.catalogue.makers();
  const rules = makers.map(({ numberRules }) => numberRules);
  const own = makerCode ?? makers[0]?.code ?? null;
  const keys = wanted.flatMap((text) => partReadings(text, rules, own)).map(({ key }) => key);
  const known = new Map((await tables.catalogue.partsByKeys(keys)).map((part) => [part.key, part]));
  const answers = new Map<string, Outcome<PartTextReading>>();
  for (const text of wanted) answers.set(text, await settle(tables, text, makers, own, known));
  return answers;
}

async function settle(
  tables: Tables,
  text: string,
  makers: readonly MakerRow[],
  own: string | null,
  known: ReadonlyMap<string, PartRow>,
): Promise<Outcome<PartTextReading>> {
  if (makers.length === 0)
    return refused('conflict', 'The catalogue names no maker yet, so no part number can be read.');
  const rules = makers.map(({ numberRules }) => numberRules);
  const chosen = choosePart(text, rules, own, (key) => {
    const row = known.get(key);
    return row ? (row.listed ? 'listed' : 'seen') : null;
  });
  const row = chosen.ok ? known.get(chosen.part.key) : undefined;
  if (chosen.ok && row?.listed) return done({ part: row, pack: chosen.part.pack });
  const carried = await partByTradeNumber(tables, text);
  if (carried) return done(carried);
  if (!chosen.ok) return refused('bad-input', chosen.sentence, { field: 'partText' });
  const { key, makerCode, canonical, pack } = chosen.part;
  if (row) return done({ part: row, pack });
  const makerId = makers.find(({ code }) => code === makerCode)!.id;
  const part = await tables.catalogue.insertUnlisted({ key, makerId, number: text.trim(), canonical });
  return done({ part, pack });
}
