import { intersectionOf, type Day, type DaySpan } from '../day';
import { boundsOf, reaches } from './bounds';
import type { ReadPiece } from './answer';
import type { Evidence, EvidenceOf } from './evidence';
import type { PreparedShop } from './prepare-shop';
import { readFirstSeen, readPartStamp, readPrintedDate, readProductionSpan, readReceipt } from './read-dates';
import { readEngineFamily } from './read-engine-family';
import { daysOfMatches, matchSerial, reportOf } from './read-serial';
import { readStandardEdition } from './read-standard-edition';
import { readTyreCode } from './read-tyre-code';
import { readVin } from './read-vin';
import { says, saysNothing, type Reading } from './reading';

/**
 * One piece of evidence as days and a sentence. A piece that cannot be read, or that speaks of days outside the
 * bounds only, carries a problem and rules nothing out. A piece set aside is read all the same.
 */
export function readEvidence(evidence: Evidence, shop: PreparedShop, today: Day): ReadPiece {
  const bounds = boundsOf(today);
  return pieceOf(evidence, read(evidence, shop, bounds), bounds);
}

/** Puts a reading into the form that is shown, its days cut to the bounds. */
export function pieceOf(evidence: Evidence, reading: Reading, bounds: DaySpan): ReadPiece {
  const sentence = reading.say();
  return {
    id: evidence.id,
    kind: evidence.kind,
    days: intersectionOf(reading.days, [bounds]),
    sentence,
    setAside: evidence.setAside ?? null,
    problem: reading.problem === null ? null : { code: reading.problem, sentence },
  };
}

/** Reads one piece without putting it into words. */
export function read(evidence: Evidence, shop: PreparedShop, bounds: DaySpan): Reading {
  const reading = readKind(evidence, shop, bounds);
  if (reading.problem !== null || reaches(reading.days, bounds)) return reading;
  return saysNothing(
    'outside-bounds',
    () => `${reading.say()} That lies before 1950 or after tomorrow, so it must be misread or mistyped.`,
  );
}

function readKind(evidence: Evidence, shop: PreparedShop, bounds: DaySpan): Reading {
  switch (evidence.kind) {
    case 'serial-scheme':
      return readSerialEvidence(evidence, shop, bounds);
    case 'printed-date':
      return readPrintedDate(evidence);
    case 'standard-edition':
      return readStandardEdition(evidence, shop);
    case 'engine-family':
      return readEngineFamily(evidence, bounds);
    case 'vin':
      return readVin(evidence, bounds);
    case 'tyre-code':
      return readTyreCode(evidence, bounds);
    case 'part-stamp':
      return readPartStamp(evidence);
    case 'production-span':
      return readProductionSpan(evidence);
    case 'receipt':
      return readReceipt(evidence);
    case 'first-seen':
      return readFirstSeen(evidence);
  }
}

function readSerialEvidence(evidence: EvidenceOf<'serial-scheme'>, shop: PreparedShop, bounds: DaySpan): Reading {
  const matches = matchSerial(evidence.serial, evidence, shop, bounds);
  const days = daysOfMatches(matches);
  const say = () => reportOf(evidence.serial, evidence, shop, matches).sentence;
  if (days.length > 0) return says(days, say);
  const known = shop.schemes(evidence.maker, evidence.line).length > 0;
  return saysNothing(known ? 'fits-no-scheme' : 'no-scheme-for-maker', say);
}
