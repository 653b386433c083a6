import { z } from 'zod';

/** Installs on one line, in some positions, whose possible build days meet `[from, to)`; null is an open side. */
export const recheckArea = z.object({
  line: z.string(),
  /** position codes; empty means every position of the line */
  positions: z.array(z.string()),
  from: z.int().nullable(),
  to: z.int().nullable(),
});

/**
 * Units whose possible build days are worked out again before they are judged: those of the lines (null: of every
 * line, and of none) that hold evidence of the kind (null: whatever they hold).
 */
export const recomputeScope = z.object({ lines: z.array(z.string()).nullable(), evidence: z.string().nullable() });
export type RecomputeScope = z.infer<typeof recomputeScope>;

/** What a recheck reads. `everything` leaves the areas aside, and so does `recompute`. */
export const recheckScope = z.object({
  everything: z.boolean(),
  areas: z.array(recheckArea),
  /** a 'stop use' is among the changed rules: units handed over long ago are read too */
  ignoresLookBack: z.boolean(),
  recompute: recomputeScope.optional(),
});
export type RecheckArea = z.infer<typeof recheckArea>;
export type RecheckScope = z.infer<typeof recheckScope>;
