import { GATES, type MissingPoint } from './gates';
import { STAGES, type Stage } from './stages';
import type { TicketFacts } from './ticket-facts';

/** What the gate out of one stage still asks for; empty means it is open. */
export function missingForStage(stage: Stage, facts: TicketFacts): readonly MissingPoint[] {
  return GATES[stage].flatMap((point) => point.asks(facts).map((missing) => ({ code: point.code, ...missing })));
}

/** What every gate still asks for, in the order of the stages. */
export function missingFor(facts: TicketFacts): readonly { stage: Stage; points: readonly MissingPoint[] }[] {
  return STAGES.map((stage) => ({ stage, points: missingForStage(stage, facts) }));
}
