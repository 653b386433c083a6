import { intersectionOf, measureOf, saySpan, type DaySet, type DaySpan } from '../day';
import type { ReadPiece, Split } from './answer';

/** For each gap in the answer, the pieces that rule out days in it. A piece that rules out the whole gap stands alone. */
export function splitsOf(days: DaySet, counted: readonly ReadPiece[]): Split[] {
  return days.slice(1).map((next, at) => {
    const gap: DaySpan = { from: days[at]!.to, to: next.from };
    const missing = counted.map((piece) => ({ piece, kept: measureOf(intersectionOf(piece.days, [gap])) }));
    const whole = missing.filter(({ kept }) => kept === 0);
    const by = (whole.length > 0 ? whole : missing.filter(({ kept }) => kept < gap.to - gap.from)).map(
      ({ piece }) => piece,
    );
    return { gap, by: by.map(({ id }) => id), sentence: saySplit(gap, by) };
  });
}

function saySplit(gap: DaySpan, by: readonly ReadPiece[]): string {
  return `Not ${saySpan(gap)}, because: ${by.map(({ sentence }) => sentence).join(' ')}`;
}
