import { day, daySpan } from '../../day';
import type { FitRule, Rulebook } from '../fit-rule';
import { usualStanding, type Source, type SourceKind } from '../source';
import type { UnitFacts } from '../unit-facts';

/** A paper issued on the day, by an invented maker. */
export function paper(kind: SourceKind, issued = '2010-01-01', key: string = kind): Source {
  const on = day(issued);
  return {
    key,
    kind,
    publisher: 'Holm',
    number: key.toUpperCase(),
    title: key,
    issued: on,
    effective: null,
    received: on,
  };
}

/** A rule that speaks of every unit of line `talus` in position `pin`, for ever, unless told otherwise. */
export function rule(key: string, source: Source, says: Partial<FitRule>): FitRule {
  return {
    key,
    version: 1,
    line: 'talus',
    models: [],
    options: [],
    positions: ['pin'],
    built: daySpan(-Infinity, Infinity),
    serials: null,
    inForce: daySpan(-Infinity, Infinity),
    known: { from: -Infinity, to: Infinity },
    source: source.key,
    required: null,
    allowed: [],
    barred: [],
    action: 'nothing',
    replaces: [],
    ...says,
  };
}

/** A bar for the usual reason. */
export function bar(part: string) {
  return { part, reason: 'breaks-later' as const, note: '' };
}

/** A rulebook of these rules, with the sources they rest on. */
export function bookOf(sources: readonly Source[], rules: readonly FitRule[], more: Partial<Rulebook> = {}): Rulebook {
  return { rules, sources, supersessions: [], standing: usualStanding, ...more };
}

/** A unit of line `talus` built within the days, both included. */
export function unit(from: string, to = from, facts: Partial<UnitFacts> = {}): UnitFacts {
  return { line: 'talus', model: 'T4', options: {}, serial: null, built: [daySpan(day(from), day(to) + 1)], ...facts };
}

/** Days on which nothing turns: papers of 2010 are in force, all is known. */
export const LATER = { today: day('2020-01-01'), now: Date.UTC(2020, 0, 1) };
