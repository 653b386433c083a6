import type { MissingPoint } from './gates';
import { missingForStage } from './missing-for';
import { nextOf, STAGE_WORDS, stageBefore, type Destination } from './stages';
import type { TicketFacts } from './ticket-facts';

/** Why something may not be done to a ticket now. */
export type NotNow =
  | {
      readonly code: 'closed' | 'on-hold' | 'no-such-step' | 'reason-missing' | 'not-on-hold';
      readonly sentence: string;
    }
  | { readonly code: 'gate-closed'; readonly sentence: string; readonly missing: readonly MissingPoint[] };

/** An answer to "may I?": null means yes. */
export type MayI = NotNow | null;

type Standing = Pick<TicketFacts, 'onHold' | 'closed'>;

/**
 * May the ticket move there? Forward one stage when its gate is open, or back one stage with a reason; from the last
 * stage out of the door. A ticket on hold does not move, a closed one never again.
 */
export function mayMove(facts: TicketFacts, to: Destination, reason: string | null): MayI {
  const stopped = mayWork(facts);
  if (stopped) return stopped;
  if (facts.onHold) return { code: 'on-hold', sentence: 'The ticket is on hold; resume it before moving it.' };
  if (to === nextOf(facts.stage)) return throughGate(facts, to);
  if (to === stageBefore(facts.stage)) {
    if (reason !== null && reason.trim() !== '') return null;
    return { code: 'reason-missing', sentence: `Going back to ${STAGE_WORDS[to]} needs a reason.` };
  }
  const steps = [nextOf(facts.stage), stageBefore(facts.stage)].filter((step) => step !== null);
  const words = steps.map((step) => STAGE_WORDS[step]).join(' or ');
  return {
    code: 'no-such-step',
    sentence: `From ${STAGE_WORDS[facts.stage]} the ticket can go to ${words}, not to ${STAGE_WORDS[to]}.`,
  };
}

/** May anything be changed on the ticket? Not once it is closed. */
export function mayWork(facts: Standing): MayI {
  if (facts.closed === null) return null;
  const how = facts.closed === 'cancelled' ? 'cancelled' : 'handed over';
  return { code: 'closed', sentence: `The ticket was ${how} and stays as it is.` };
}

/** May the ticket be put on hold? Any open ticket that is not on hold already. */
export function mayHold(facts: Standing): MayI {
  return mayWork(facts) ?? (facts.onHold ? { code: 'on-hold', sentence: 'The ticket is on hold already.' } : null);
}

/** May the ticket be resumed? Only one that is on hold. */
export function mayResume(facts: Standing): MayI {
  return mayWork(facts) ?? (facts.onHold ? null : { code: 'not-on-hold', sentence: 'The ticket is not on hold.' });
}

/** May the ticket be cancelled? Any open ticket, also one on hold. */
export function mayCancel(facts: Standing): MayI {
  return mayWork(facts);
}

function throughGate(facts: TicketFacts, to: Destination): MayI {
  const missing = missingForStage(facts.stage, facts);
  if (missing.length === 0) return null;
  const points = missing.length === 1 ? 'one point is' : `${missing.length} points are`;
  return { code: 'gate-closed', sentence: `Before ${STAGE_WORDS[to]}, ${points} still open.`, missing };
}
