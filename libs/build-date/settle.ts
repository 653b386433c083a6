import { z } from 'zod';
import type { DaySet } from '../day';
import { EVIDENCE_KINDS, type EvidenceKind } from './evidence';

/** A stretch of possible days and the outcome of the ruling there. Equal outcomes may lie apart. */
export interface OutcomeCut {
  readonly days: DaySet;
  readonly outcome: string;
}

/** A kind of evidence that is not read yet, and how surely reading it would leave one outcome. */
export interface SettlingKind {
  readonly kind: EvidenceKind;
  /** Share of the possible days, 0 to 1, on which reading it would leave one outcome. */
  readonly share: number;
  readonly sureness: 'sure' | 'likely' | 'possible';
  /** Effort of reading it, 1 (glance at the plate) upwards; see `READING_EFFORT`. */
  readonly effort: number;
  readonly sentence: string;
}

/** What would settle the ruling: nothing is needed, or kinds ranked sure first, cheapest to read first among equals. */
export interface Settling {
  readonly needed: boolean;
  readonly kinds: readonly SettlingKind[];
  readonly sentence: string;
}

export const SettlingSchema = z.object({
  needed: z.boolean(),
  kinds: z.array(
    z.object({
      kind: z.enum(EVIDENCE_KINDS),
      share: z.number().min(0).max(1),
      sureness: z.enum(['sure', 'likely', 'possible']),
      effort: z.number(),
      sentence: z.string(),
    }),
  ),
  sentence: z.string(),
});
