import { intersectionOf, saySet, type DaySet, type DaySpan } from '../day';
import type { Misreading } from './answer';
import { readingsWithOneChange, readingsWithTwoChanges } from './confused-characters';
import type { Evidence, EvidenceOf } from './evidence';
import type { PreparedShop } from './prepare-shop';
import { read } from './read-evidence';
import type { Reading } from './reading';

/** More offers than this help nobody at the bench; the nearest come first. */
const MOST_OFFERS = 8;

/** A piece with what it was read as; pieces set aside are not among them. */
export interface ActivePiece {
  readonly evidence: Evidence;
  readonly reading: Reading;
}

type Transcript = EvidenceOf<'serial-scheme'> | EvidenceOf<'vin'>;

/**
 * Other readings of confused characters in serials and vehicle numbers, offered when, and only when, the given one
 * cannot be read or stands in a conflict; each offer agrees with all other evidence. While the other evidence
 * conflicts by itself there is nothing to agree with: then only what cannot be read is offered otherwise. Two
 * changes are tried only when one is not enough. `conflicts` are the minimal conflicts as ids.
 */
export function misreadingsOf(
  active: readonly ActivePiece[],
  conflicts: readonly (readonly string[])[],
  shop: PreparedShop,
  bounds: DaySpan,
): Misreading[] {
  return active.flatMap(({ evidence, reading: { problem } }) => {
    if (evidence.kind !== 'serial-scheme' && evidence.kind !== 'vin') return [];
    const unreadable = problem !== null && problem !== 'no-scheme-for-maker';
    if (!unreadable && !conflicts.some((ids) => ids.includes(evidence.id))) return [];
    const others = active.filter((other) => other.evidence.id !== evidence.id && other.reading.problem === null);
    const rest = others.reduce<DaySet>((days, { reading }) => intersectionOf(days, reading.days), [bounds]);
    return rest.length > 0 || unreadable ? offersFor(evidence, rest, shop, bounds) : [];
  });
}

function offersFor(evidence: Transcript, rest: DaySet, shop: PreparedShop, bounds: DaySpan): Misreading[] {
  const given = transcriptOf(evidence);
  const text = given.trim().toUpperCase();
  const offer = (possible: string): Misreading[] => {
    const reading = read(withTranscript(evidence, possible), shop, bounds);
    const days = intersectionOf(reading.days, rest);
    if (reading.problem !== null || (rest.length > 0 && days.length === 0)) return [];
    return [{ id: evidence.id, given, possible, days, sentence: sayOffer(given, possible, days) }];
  };
  const near = readingsWithOneChange(text).flatMap(offer);
  const found = near.length > 0 ? near : readingsWithTwoChanges(text).flatMap(offer);
  return found.slice(0, MOST_OFFERS);
}

function transcriptOf(evidence: Transcript): string {
  return evidence.kind === 'vin' ? evidence.vin : evidence.serial;
}

function withTranscript(evidence: Transcript, text: string): Transcript {
  return evidence.kind === 'vin' ? { ...evidence, vin: text } : { ...evidence, serial: text };
}

function sayOffer(given: string, possible: string, days: DaySet): string {
  const then = days.length > 0 ? `then it was built ${saySet(days)}` : 'the other evidence would still conflict';
  return `Could ${given} be ${possible}? Look at the plate again; ${then}.`;
}
