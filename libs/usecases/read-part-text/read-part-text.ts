import { partKeyOf, readPartNumber, sayPartNumberProblem } from '../../part-number';
import { done, refused, type Outcome } from '../outcome';
import type { MakerRow, PartRow, Tables } from '../ports/index';

/** A part as it was typed or scanned, and how many are in the bag it came in. */
export interface PartTextReading {
  readonly part: PartRow;
  readonly pack: number;
}

interface Candidate {
  readonly maker: MakerRow;
  readonly canonical: string;
  readonly pack: number;
  readonly key: string;
}

/**
 * Reads typed part numbers by the makers' own rules: first as the unit's maker writes them, then as any other maker of
 * the catalogue does. A number that no catalogue lists becomes an unlisted part of the unit's maker, so that the
 * record says what was read. All texts are looked up together; the answer maps each text to its part or its problem.
 */
export async function readPartTexts(
  tables: Tables,
  texts: readonly string[],
  makerCode: string | null,
): Promise<ReadonlyMap<string, Outcome<PartTextReading>>> {
  const wanted = [...new Set(texts)];
  if (wanted.length === 0) return new Map();
  const makers = ownFirst(await tables.catalogue.makers(), makerCode);
  const read = new Map(wanted.map((text) => [text, candidatesOf(text, makers)]));
  const keys = [...read.values()].flat().map(({ key }) => key);
  const known = new Map((await tables.catalogue.partsByKeys(keys)).map((part) => [part.key, part]));
  const answers = new Map<string, Outcome<PartTextReading>>();
  for (const text of wanted) answers.set(text, await settle(tables, text, makers, read.get(text)!, known));
  return answers;
}

function ownFirst(makers: readonly MakerRow[], makerCode: string | null): readonly MakerRow[] {
  return [...makers].sort((a, b) => Number(b.code === makerCode) - Number(a.code === makerCode));
}

function candidatesOf(text: string, makers: readonly MakerRow[]): Candidate[] {
  return makers.flatMap((maker) => {
    const reading = readPartNumber(text, maker.numberRules);
    if (!reading.ok) return [];
    const { canonical, pack } = reading.number;
    return [{ maker, canonical, pack, key: partKeyOf(maker.numberRules.makerCode, canonical) }];
  });
}

async function settle(
  tables: Tables,
  text: string,
  makers: readonly MakerRow[],
  candidates: readonly Candidate[],
  known: ReadonlyMap<string, PartRow>,
): Promise<Outcome<PartTextReading>> {
  const found = [true, false].flatMap((listed) => candidates.filter(({ key }) => known.get(key)?.listed === listed))[0];
  if (found) return done({ part: known.get(found.key)!, pack: found.pack });
  const own = candidates.find(({ maker }) => maker === makers[0]);
  if (own) {
    const { key, maker, canonical, pack } = own;
    const part = await tables.catalogue.insertUnlisted({ key, makerId: maker.id, number: text.trim(), canonical });
    return done({ part, pack });
  }
  if (!makers[0]) return refused('conflict', 'The catalogue names no maker yet, so no part number can be read.');
  const reading = readPartNumber(text, makers[0].numberRules);
  const detail = reading.ok ? `"${text}" is no part number.` : sayPartNumberProblem(text, reading.problem);
  return refused('bad-input', detail, { field: 'partText' });
}
