/** The stages of a ticket, in the order a unit goes through them. */
export const STAGES = ['intake', 'inspection', 'parts-selection', 'repair', 'handover'] as const;
export type Stage = (typeof STAGES)[number];

/** Where a move can lead: a stage, or out of the door. */
export type Destination = Stage | 'handed-over';

/** The stage after this one; `handed-over` after the last. */
export function nextOf(stage: Stage): Destination {
  return STAGES[STAGES.indexOf(stage) + 1] ?? 'handed-over';
}

/** The stage before this one; null before the first. */
export function stageBefore(stage: Stage): Stage | null {
  return STAGES[STAGES.indexOf(stage) - 1] ?? null;
}

/** The stage as the shop says it. */
export const STAGE_WORDS: Readonly<Record<Destination, string>> = {
  intake: 'intake',
  inspection: 'inspection',
  'parts-selection': 'parts selection',
  repair: 'repair',
  handover: 'handover',
  'handed-over': 'handed over',
};
