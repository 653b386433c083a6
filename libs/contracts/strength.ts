import { z } from 'zod';
import { FASTENER_SEVERITIES } from '../fastener';

/** Both ends inclusive; equal ends mean one value. */
const range = z.object({ low: z.number(), high: z.number() });

/**
 * How wrong a wrong shear fastener is; torque in N·m. The figures say how bad it is, never which part to take. Where
 * the two cannot be compared the figures are null and the sentences say why.
 */
export const strengthView = z.object({
  fitted: range.nullable(),
  required: range.nullable(),
  /** of the drive line; null where the shop does not know it */
  rated: z.number().nullable(),
  class: z.enum(['breaks-sooner', 'as-required', 'breaks-later', 'cannot-tell']),
  /** torque of the fitted part over that of the required one */
  ratio: range.nullable(),
  /** ratios the shop counts as required, both included */
  threshold: z.object({ soonerBelow: z.number(), laterAbove: z.number() }),
  severity: z.enum(FASTENER_SEVERITIES),
  signal: z.enum(['WARNING', 'NOTICE']).nullable(),
  /** the answer first */
  sentences: z.array(z.string()),
  caution: z.string(),
});
export type StrengthView = z.infer<typeof strengthView>;

/** Whether a fastener goes into its joint and holds there, looked at one thing at a time. */
export const fitView = z.object({
  fits: z.enum(['yes', 'no', 'not-told']),
  findings: z.array(
    z.object({
      field: z.enum(['diameter', 'length', 'room', 'thread', 'cross-hole']),
      fits: z.enum(['yes', 'no', 'not-told']),
      sentence: z.string(),
    }),
  ),
});
export type FitView = z.infer<typeof fitView>;
