import type { PickPart } from '../../contracts';
import type { Judgement } from '../../fit-rules';
import { done, refused, type Outcome } from '../outcome';
import type { PartRow, PositionRow } from '../ports/index';
import { judgePart, type WholeTicket } from '../view-ticket/index';

/** What a pick is for, and how the part is judged there. */
export interface WhereItServes {
  /** The position it was picked for by name; null for a spare that was picked for the unit as such. */
  readonly position: PositionRow | null;
  /** The positions such a spare serves. */
  readonly spareFor: readonly PositionRow[];
  /** Null where no paper speaks of the part. */
  readonly judgement: Judgement | null;
}

/** The position a part is picked for, when it makes sense there. */
export function positionFor(
  whole: WholeTicket,
  { position: code, purpose, quantity }: PickPart,
): Outcome<PositionRow | null> {
  const { stage } = whole.ticket;
  if (stage === 'intake' || stage === 'inspection') {
    return refused('wrong-stage', 'Parts are picked once the inspection is done.');
  }
  if (code === null) {
    return purpose === 'spare'
      ? done(null)
      : refused('bad-input', 'A part to be fitted needs its position.', { field: 'position' });
  }
  const position = whole.positions.get(code);
  if (!position) return refused('bad-input', `The unit has no position '${code}'.`, { field: 'position' });
  if (purpose === 'fit' && quantity > position.places) {
    const detail = `${position.name} has ${position.places} place(s), so ${quantity} cannot be fitted; pick the rest as spares.`;
    return refused('bad-input', detail, { field: 'quantity' });
  }
  return done(position);
}

/**
 * A spare without a position serves every position in which it is right or allowed. Where it is so in none, the papers
 * that speak against it count: a bar, or that it depends on something not known. A part of which no paper speaks at all
 * is a sundry, and nothing follows from rulings for it.
 */
export function whereItServes(whole: WholeTicket, part: PartRow, position: PositionRow | null): WhereItServes {
  if (position) return { position, spareFor: [], judgement: judgePart(whole, position.code, part.key) };
  const judged = whole.positionList.flatMap((one) => {
    const judgement = judgePart(whole, one.code, part.key);
    return judgement ? [{ one, judgement }] : [];
  });
  const good = judged.filter(({ judgement: { verdict } }) => verdict === 'right' || verdict === 'allowed');
  const serves = good.length > 0 ? good : judged.filter(({ judgement }) => speaksOf(judgement));
  return { position: null, spareFor: serves.map(({ one }) => one), judgement: serves[0]?.judgement ?? null };
}

function speaksOf({ bars, candidates }: Judgement): boolean {
  const named = candidates.some(({ pieces }) =>
    pieces.some(({ outcome }) => outcome === 'required' || outcome === 'allowed' || outcome === 'disputed'),
  );
  return bars.length > 0 || named;
}
