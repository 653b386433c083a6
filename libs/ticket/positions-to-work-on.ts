import type { PickFacts, PlaceFacts, PositionFacts, TicketFacts } from './ticket-facts';

/** Parts picked to be fitted in a position and not brought back to the shelf. */
export function picksFor(facts: Pick<TicketFacts, 'picks'>, position: string): readonly PickFacts[] {
  return facts.picks.filter(
    (pick) => pick.purpose === 'fit' && pick.state !== 'returned' && pick.position === position,
  );
}

/** A place calls for work when the part broke or is gone, or is the wrong one and no manager has accepted it. */
export function callsForWork(place: PlaceFacts): boolean {
  if (place.leftOut) return false;
  if (place.condition === 'sheared' || place.condition === 'missing') return true;
  return (place.verdict === 'wrong' || place.verdict === 'outdated') && !place.accepted;
}

/** The positions to be worked on: a part is picked for them, or a place calls for work. */
export function positionsToWorkOn(facts: Pick<TicketFacts, 'positions' | 'picks'>): readonly PositionFacts[] {
  return facts.positions.filter(
    (position) => picksFor(facts, position.code).length > 0 || position.places.some(callsForWork),
  );
}

/** True for a picked part that the ruling requires or allows, or that a manager has excepted. */
export function mayBeFitted(pick: PickFacts): boolean {
  return pick.exception || pick.verdict === 'right' || pick.verdict === 'allowed';
}
