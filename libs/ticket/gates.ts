import { sayMinor } from './estimate/sums';
import { picksFor, mayBeFitted, positionsToWorkOn } from './positions-to-work-on';
import { safetyStillOpen } from './safety-points';
import type { Stage } from './stages';
import type { PositionFacts, TicketFacts } from './ticket-facts';

/** What a gate still asks for: a stable code, a sentence for a person, the position it speaks of. */
export interface MissingPoint {
  readonly code: string;
  readonly sentence: string;
  readonly position: string | null;
}

/** One thing a gate asks; it answers with what is still missing, nothing when it is satisfied. */
export interface GatePoint {
  readonly code: string;
  readonly asks: (facts: TicketFacts) => readonly Omit<MissingPoint, 'code'>[];
}

/** Work beyond what the owner said yes to needs a new yes, at every gate from the repair on: parts can come on later. */
const OWNERS_WORD: GatePoint = { code: 'not-authorised', asks: workBeyondTheOwnersWord };

/**
 * What each stage's gate asks before the ticket may go on. Points look only at the facts of the ticket, so the page
 * can ask the same table that the server enforces.
 */
export const GATES: Readonly<Record<Stage, readonly GatePoint[]>> = {
  intake: [
    {
      code: 'line-unknown',
      asks: (facts) => unless(facts.lineKnown, 'Record which product line the unit belongs to.'),
    },
    {
      code: 'serial-not-recorded',
      asks: (facts) => unless(facts.serialRecorded, 'Record the serial number, or why there is none to read.'),
    },
  ],
  inspection: [{ code: 'place-not-looked-at', asks: placesNotLookedAt }],
  'parts-selection': [
    { code: 'ruling-not-settled', asks: rulingsNotSettled },
    { code: 'no-part-picked', asks: positionsWithoutPart },
    { code: 'part-not-right', asks: partsNotRight },
    OWNERS_WORD,
  ],
  repair: [
    { code: 'safety-not-ticked', asks: safetyNotTicked },
    { code: 'part-not-fitted', asks: partsNeitherFittedNorReturned },
    OWNERS_WORD,
  ],
  handover: [{ code: 'flag-open', asks: flagsOpen }, OWNERS_WORD],
};

const unless = (holds: boolean, sentence: string) => (holds ? [] : [{ sentence, position: null }]);

const ofPosition = (position: PositionFacts, sentence: string) => ({ sentence, position: position.code });

const names = (list: readonly string[]): string => list.join(', ');

function placesNotLookedAt(facts: TicketFacts) {
  return facts.positions.flatMap((position) => {
    const open = position.places.filter((place) => !place.recorded).map((place) => place.name);
    if (open.length === 0) return [];
    return [ofPosition(position, `${position.name}: record what is in ${names(open)}, or leave it out with a reason.`)];
  });
}

/** A manager's exception for every part picked stands in for a settled ruling. */
function rulingsNotSettled(facts: TicketFacts) {
  return positionsToWorkOn(facts).flatMap((position) => {
    const picks = picksFor(facts, position.code);
    const excepted = picks.length > 0 && picks.every((pick) => pick.exception);
    if (position.rulingSettled || excepted) return [];
    return [ofPosition(position, `${position.name}: the ruling is not settled; find out more, or ask a manager.`)];
  });
}

function positionsWithoutPart(facts: TicketFacts) {
  return positionsToWorkOn(facts).flatMap((position) =>
    picksFor(facts, position.code).length > 0
      ? []
      : [ofPosition(position, `${position.name}: pick the part that is to be fitted.`)],
  );
}

function partsNotRight(facts: TicketFacts) {
  return facts.positions.flatMap((position) => {
    const bad = picksFor(facts, position.code).filter((pick) => !mayBeFitted(pick));
    if (bad.length === 0) return [];
    const parts = names([...new Set(bad.map((pick) => pick.part))]);
    return [
      ofPosition(position, `${position.name}: ${parts} is neither right nor allowed; return it, or ask a manager.`),
    ];
  });
}

function workBeyondTheOwnersWord({ money: { totalMinor, authorisedMinor, currency } }: TicketFacts) {
  const total = sayMinor(totalMinor, currency);
  if (authorisedMinor === null) {
    return unless(totalMinor === 0, `Ask for the owner's word: the estimate comes to ${total}.`);
  }
  const word = sayMinor(authorisedMinor, currency);
  return unless(
    totalMinor <= authorisedMinor,
    `Ask for the owner's word again: the estimate comes to ${total}, and the owner said yes to ${word}.`,
  );
}

function safetyNotTicked(facts: TicketFacts) {
  const open = safetyStillOpen(facts.safetyTicked).length;
  return unless(open === 0, `Tick the safety points: ${open} of them still open.`);
}

function partsNeitherFittedNorReturned(facts: TicketFacts) {
  return facts.picks
    .filter((pick) => pick.purpose === 'fit' && pick.state === 'picked')
    .map((pick) => ({
      sentence: `${pick.part}: record where it was fitted, or return it to the shelf.`,
      position: pick.position,
    }));
}

function flagsOpen(facts: TicketFacts) {
  return facts.flags
    .filter((flag) => flag.state === 'open' || flag.state === 'lapsed')
    .map((flag) => ({
      sentence:
        flag.state === 'open'
          ? `${flag.placeName}: a manager has to decide about the flag.`
          : `${flag.placeName}: the manager's acceptance has run out; a manager has to decide again.`,
      position: flag.position,
    }));
}
