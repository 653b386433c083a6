import { inferBuildDays, possibleKeys, readSerial, type Evidence, type SerialOwner } from '../../../../libs/build-date';
import { day, formatDay, type Day, type DaySet } from '../../../../libs/day';
import type { UnitFacts } from '../../../../libs/fit-rules';
import type { Book, LineEntry } from '../files/read-book';

/** A unit as far as its build date goes. */
export interface PlatedUnit {
  readonly line: LineEntry | null;
  readonly serial: string | null;
  /** What else was read off the unit. */
  readonly evidence: readonly Evidence[];
}

/** All evidence of a unit: what was read, and what its identity brings along, its serial and its line's production. */
export function evidenceOfUnit({ line, serial, evidence }: PlatedUnit): readonly Evidence[] {
  if (line === null) return evidence;
  const implied: Evidence[] = [];
  if (serial !== null)
    implied.push({ id: 'serial', kind: 'serial-scheme', maker: line.maker, line: line.code, serial });
  const last = line.producedUntil === null ? null : formatDay(day(line.producedUntil) - 1);
  implied.push({ id: 'production', kind: 'production-span', first: line.producedFrom, last });
  return [...implied, ...evidence];
}

/** The possible build dates by all evidence of the unit. */
export function builtByEvidence(unit: PlatedUnit, book: Book, today: Day): DaySet {
  return inferBuildDays(evidenceOfUnit(unit), book.shop, today);
}

/**
 * The serial's scheme and key where one reading of it is left within the possible build dates; the scheme alone where
 * only the key is open; null where nothing can be said.
 */
export function serialKeyOf(
  serial: string,
  owner: SerialOwner,
  built: DaySet,
  book: Book,
  today: Day,
): UnitFacts['serial'] {
  const keys = possibleKeys(readSerial(serial, owner, book.shop, today), built);
  const [first] = keys;
  if (!first || keys.some(({ scheme }) => scheme !== first.scheme)) return null;
  return { scheme: first.scheme, key: keys.length === 1 ? first.key : null };
}
