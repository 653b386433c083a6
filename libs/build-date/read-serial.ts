import { daySet, saySet, type Day, type DaySet, type DaySpan } from '../day';
import { boundsOf } from './bounds';
import type { CompiledScheme } from './compile-scheme';
import type { PreparedShop } from './prepare-shop';
import { keyOf } from './serial-key';
import { meaningOf } from './serial-meaning';
import type { PossibleKey, ReadField, SerialReading, SerialReport } from './serial-reading';
import { daysByYear, type DaysInYear } from './serial-days';

const SEPARATORS = /[\s\-\u2010-\u2015/._]+/g;

const BARE = /^[A-Z0-9]+$/;

/** A serial as a scheme matched it, before anything is put into words. */
export interface SerialMatch {
  readonly compiled: CompiledScheme;
  readonly groups: readonly string[];
  readonly byYear: readonly DaysInYear[];
}

/** Whose serial it is. Without a line every scheme of the maker is tried. */
export interface SerialOwner {
  readonly maker: string;
  readonly line?: string | undefined;
}

/**
 * Every scheme whose form the serial fits; `byYear` is empty for those that name no possible day. Case, blanks and
 * dashes do not count, save that a scheme with a sequence of varying length needs its separators.
 */
export function matchSerial(serial: string, owner: SerialOwner, shop: PreparedShop, bounds: DaySpan): SerialMatch[] {
  const plain = BARE.test(serial);
  const capitals = plain ? serial : serial.trim().toUpperCase();
  const bare = plain ? serial : capitals.replace(SEPARATORS, '');
  const matches: SerialMatch[] = [];
  for (const compiled of shop.schemes(owner.maker, owner.line)) {
    const text = compiled.needsSeparators ? capitals.replace(SEPARATORS, '-') : bare;
    const groups = compiled.pattern.exec(text);
    if (groups) matches.push({ compiled, groups, byYear: daysByYear(compiled, groups, bounds) });
  }
  return matches;
}

/** The days all fitting schemes leave together; empty when none fits. */
export function daysOfMatches(matches: readonly SerialMatch[]): DaySet {
  const spans: DaySpan[] = [];
  for (const { byYear } of matches) for (const { days } of byYear) spans.push(days);
  return daySet(spans);
}

/**
 * Reads a serial by every scheme of its maker: which characters were read as what, the days and the key under each.
 * A serial that fits no scheme, or several, is reported so; nothing is chosen.
 */
export function readSerial(serial: string, owner: SerialOwner, shop: PreparedShop, today: Day): SerialReport {
  return reportOf(serial, owner, shop, matchSerial(serial, owner, shop, boundsOf(today)));
}

/** Puts matches into words. */
export function reportOf(
  serial: string,
  owner: SerialOwner,
  shop: PreparedShop,
  matches: readonly SerialMatch[],
): SerialReport {
  const readings = matches.filter((match) => match.byYear.length > 0).map(readingOf);
  const rejected = matches
    .filter((match) => match.byYear.length === 0)
    .map(({ compiled: { scheme } }) => ({
      scheme: scheme.id,
      schemeName: scheme.name,
      why: `its form fits ${scheme.name}, but it names no day on which that scheme was in use`,
    }));
  const fit = readings.length === 0 ? 'none' : readings.length === 1 ? 'one' : 'several';
  const known = shop.schemes(owner.maker, owner.line).length;
  return { serial, fit, readings, rejected, sentence: sayReport(serial, owner, readings, rejected, known) };
}

/** The keys a serial can have given the unit's possible days: one when the build date leaves one, else several. */
export function possibleKeys(report: SerialReport, days: DaySet): PossibleKey[] {
  const overlaps = (key: PossibleKey) => key.days.some((a) => days.some((b) => a.from < b.to && b.from < a.to));
  return report.readings.flatMap((reading) => reading.keys.filter(overlaps));
}

function readingOf({ compiled, groups, byYear }: SerialMatch): SerialReading {
  const fields: ReadField[] = [];
  let at = 0;
  compiled.fields.forEach((field, index) => {
    const text = groups[index + 1]!;
    fields.push({ kind: field.kind, at, text, meaning: meaningOf(field, text) });
    at += text.length;
  });
  const { id, name } = compiled.scheme;
  const keys = byYear.map(({ year, days }) => ({ scheme: id, key: keyOf(compiled, groups, year), days: [days] }));
  const days = daySet(byYear.map((found) => found.days));
  return { scheme: id, schemeName: name, characters: groups.slice(1).join(''), fields, days, keys };
}

function sayReport(
  serial: string,
  { maker }: SerialOwner,
  readings: readonly SerialReading[],
  rejected: SerialReport['rejected'],
  known: number,
): string {
  if (known === 0) return `Serial ${serial}: the shop has no serial scheme of ${maker}; enter one to make it count.`;
  if (readings.length > 1) {
    const ways = readings.map((reading) => `${reading.schemeName} (${saySet(reading.days)})`).join(' and ');
    return `Serial ${serial} fits in ${readings.length} ways, ${ways}; all stay possible.`;
  }
  const [only] = readings;
  if (only) return `Serial ${serial} by ${only.schemeName}: ${sayFields(only.fields)}; built ${saySet(only.days)}.`;
  if (rejected.length > 0)
    return `Serial ${serial} fits no scheme of ${maker}: ${rejected.map(({ why }) => why).join('; ')}.`;
  return `Serial ${serial} fits no scheme of ${maker}; read the plate again, or enter the scheme it follows.`;
}

function sayFields(fields: readonly ReadField[]): string {
  const telling = fields.filter((field) => field.kind !== 'literal' && field.kind !== 'other');
  return telling.map((field) => `${field.text} is ${field.meaning}`).join(', ') || 'no field tells the date';
}
