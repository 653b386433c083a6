import { intersectionOf, measureOf, saySet, type Day, type DaySet, type DaySpan } from '../day';
import { boundsOf } from './bounds';
import type { BuildDateAnswer, ReadPiece } from './answer';
import type { Evidence } from './evidence';
import { minimalConflicts } from './minimal-conflicts';
import { misreadingsOf } from './misreadings';
import type { PreparedShop } from './prepare-shop';
import { pieceOf, read } from './read-evidence';
import { splitsOf } from './splits';

/**
 * What all evidence together says about the build date, with every reason: the pieces read, the conflicts when no day
 * is left, other readings to look for, and what splits an answer of several spans. At most 20 pieces that count.
 */
export function inferBuildDates(evidence: readonly Evidence[], shop: PreparedShop, today: Day): BuildDateAnswer {
  const bounds = boundsOf(today);
  const readings = evidence.map((piece) => ({ evidence: piece, reading: read(piece, shop, bounds) }));
  const pieces = readings.map((piece) => pieceOf(piece.evidence, piece.reading, bounds));
  const counted = pieces.filter((piece) => piece.setAside === null && piece.problem === null);
  const days = counted.reduce<DaySet>((left, piece) => intersectionOf(left, piece.days), [bounds]);
  const conflicts = days.length > 0 ? [] : conflictsOf(counted, bounds);
  const active = readings.filter((piece) => piece.evidence.setAside === undefined);
  return {
    bounds,
    days,
    sentence: sayAnswer(days, counted, conflicts),
    pieces,
    conflicts,
    misreadings: misreadingsOf(active, conflicts, shop, bounds),
    splits: splitsOf(days, counted),
  };
}

function conflictsOf(counted: readonly ReadPiece[], bounds: DaySpan): string[][] {
  const groups = minimalConflicts(
    counted.map((piece) => piece.days),
    bounds,
  );
  return groups.map((group) => group.map((place) => counted[place]!.id));
}

function sayAnswer(days: DaySet, counted: readonly ReadPiece[], conflicts: readonly unknown[]): string {
  if (days.length === 0) {
    const ways = conflicts.length === 1 ? 'one group of pieces' : `${conflicts.length} groups of pieces`;
    return `No day fits all the evidence: ${ways} cannot all be true; read those plates again.`;
  }
  if (counted.length === 0) return 'No evidence says when it was built.';
  const count = measureOf(days);
  return `Built ${saySet(days)} (${count === 1 ? 'one possible day' : `${count} possible days`}).`;
}
