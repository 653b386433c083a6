import { isPartKey, partKeyOf, splitPartKey, type NumberRules, type PartKey } from './number-rules';
import { readPartNumber, sayPartNumberProblem } from './read-part-number';

/** How the catalogue knows a part: it lists it, it was only ever read off a part, or not at all. */
export type PartStanding = 'listed' | 'seen' | null;

/** A text read as one maker writes part numbers. */
export interface PartReading {
  readonly key: PartKey;
  readonly makerCode: string;
  readonly canonical: string;
  readonly pack: number;
}

export type ChosenPart =
  { readonly ok: true; readonly part: PartReading } | { readonly ok: false; readonly sentence: string };

/** A number that a spreadsheet took for a quantity and rewrote, such as 3.01E+05. */
const EATEN = /^\d([.,]\d+)?E\+\d+$/i;

/**
 * Every way to read a typed number: `MAKER/NUMBER` where there is such a maker; else as the own maker writes numbers,
 * then as each other does. Empty when no maker can have printed it.
 */
export function partReadings(text: string, makers: readonly NumberRules[], own: string | null): readonly PartReading[] {
  const typed = text.trim();
  if (EATEN.test(typed)) return [];
  if (isPartKey(typed)) {
    const { makerCode, canonical } = splitPartKey(typed);
    if (makers.some((maker) => maker.makerCode === makerCode)) return [{ key: typed, makerCode, canonical, pack: 1 }];
  }
  const ordered = [...makers].sort((a, b) => Number(b.makerCode === own) - Number(a.makerCode === own));
  return ordered.flatMap((maker) => {
    const reading = readPartNumber(typed, maker);
    if (!reading.ok) return [];
    const { canonical, pack } = reading.number;
    return [{ key: partKeyOf(maker.makerCode, canonical), makerCode: maker.makerCode, canonical, pack }];
  });
}

/**
 * Which part a typed number is: the first reading that the catalogue lists, then one that was seen before, then the
 * own maker's reading, though no catalogue lists it. Refused in one sentence when it can be none of them.
 */
export function choosePart(
  text: string,
  makers: readonly NumberRules[],
  own: string | null,
  standing: (key: PartKey) => PartStanding,
): ChosenPart {
  const readings = partReadings(text, makers, own);
  const chosen =
    readings.find(({ key }) => standing(key) === 'listed') ??
    readings.find(({ key }) => standing(key) === 'seen') ??
    (isGivenKey(readings, text) ? readings[0] : readings.find(({ makerCode }) => makerCode === own));
  return chosen ? { ok: true, part: chosen } : { ok: false, sentence: whyNone(text, makers, own) };
}

function isGivenKey([first]: readonly PartReading[], text: string): boolean {
  return first !== undefined && first.key === text.trim();
}

function whyNone(text: string, makers: readonly NumberRules[], own: string | null): string {
  if (EATEN.test(text.trim()))
    return `"${text}" is a number that a spreadsheet rewrote; keep the column as text and enter the part again.`;
  const maker = makers.find(({ makerCode }) => makerCode === own);
  if (!maker) return `"${text}" is in no catalogue; give it as MAKER/NUMBER.`;
  const reading = readPartNumber(text, maker);
  return reading.ok ? `"${text}" is no part number.` : sayPartNumberProblem(text, reading.problem);
}
