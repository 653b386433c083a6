import { STAGE_NAMES, type MissingPoint, type StageName, type TicketView } from '../../../../../libs/contracts';

/** The one thing to do next on a ticket, in words, and what its gate still asks for. */
export interface NextStep {
  to: StageName | 'handed-over';
  words: string;
  missing: readonly MissingPoint[];
}

const WORDS: Record<StageName, string> = {
  intake: 'Hand over to the bench',
  inspection: 'Go on to parts selection',
  'parts-selection': 'Start the repair',
  repair: 'Go on to handover',
  handover: 'Hand the unit over',
};

/** What comes after the present stage; null for a ticket that is closed or on hold. */
export function nextStep(ticket: Pick<TicketView, 'stage' | 'closedAt' | 'onHold' | 'missing'>): NextStep | null {
  if (ticket.closedAt !== null || ticket.onHold !== null) return null;
  const missing = ticket.missing.find(({ stage }) => stage === ticket.stage)?.points ?? [];
  const to = STAGE_NAMES[STAGE_NAMES.indexOf(ticket.stage) + 1] ?? 'handed-over';
  return { to, words: WORDS[ticket.stage], missing };
}

/** What the button says: the act, or what is missing when it cannot be pressed. */
export function buttonWords({ words, missing }: NextStep): string {
  if (missing.length === 0) return words;
  return `${words}: ${missing.length} missing`;
}
