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
 * cannot be read or stands in a conflict; each offer ends that trouble. Two changes are tried only when one is not
 * enough. `conflicts` are the minimal conflicts as ids.
 */
export function misreadingsOf(
  active: readonly ActivePiece[],
  conflicts: readonly (readonly string[])[],
  shop: PreparedShop,
  bounds: DaySpan,
): Misreading[] {
  return active.flatMap((piece) => {
    const { evidence } = piece;
    if (evidence.kind !== 'serial-scheme' && evidence.kind !== 'vin') return [];
    const own = conflicts.filter((ids) => ids.includes(evidence.id));
    const unreadable = piece.reading.problem !== null && piece.reading.problem !== 'no-scheme-for-maker';
    return unreadable || own.length > 0 ? offersFor(evidence, partnersOf(active, evidence.id, own), shop, bounds) : [];
  });
}

/**
 * The days an offer must meet: those all other evidence leaves; or, when that evidence conflicts by itself, the days
 * the partners leave in each conflict this piece stands in.
 */
function partnersOf(active: readonly ActivePiece[], id: string, own: readonly (readonly string[])[]) {
  const others = active.filter(({ evidence, reading }) => evidence.id !== id && reading.problem === null);
  const rest = shared(others);
  if (rest.length > 0) return { rest, toMeet: [rest] };
  return { rest, toMeet: own.map((ids) => shared(others.filter(({ evidence }) => ids.includes(evidence.id)))) };
}

function shared(pieces: readonly ActivePiece[]): DaySet {
  return pieces.reduce<DaySet>(
    (days, { reading }) => intersectionOf(days, reading.days),
    [{ from: -Infinity, to: Infinity }],
  );
}

function offersFor(
  evidence: Transcript,
  { rest, toMeet }: { rest: DaySet; toMeet: DaySet[] },
  shop: PreparedShop,
  bounds: DaySpan,
): Misreading[] {
  const given = transcriptOf(evidence);
  const text = given.trim().toUpperCase();
  const offer = (possible: string): Misreading[] => {
    const reading = read(withTranscript(evidence, possible), shop, bounds);
    const days = intersectionOf(reading.days, [bounds]);
    if (reading.problem !== null || toMeet.some((partner) => intersectionOf(partner, days).length === 0)) return [];
    const left = intersectionOf(days, rest);
    return [{ id: evidence.id, given, possible, days: left, sentence: sayOffer(given, possible, left) }];
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
