import { z } from 'zod';

/** Installs on one line, in some positions, whose possible build days meet `[from, to)`; null is an open side. */
export const recheckArea = z.object({
  line: z.string(),
  /** position codes; empty means every position of the line */
  positions: z.array(z.string()),
  from: z.int().nullable(),
  to: z.int().nullable(),
});

/** What a recheck reads. `everything` leaves the areas aside. */
export const recheckScope = z.object({
  everything: z.boolean(),
  areas: z.array(recheckArea),
  /** a 'stop use' is among the changed rules: units handed over long ago are read too */
  ignoresLookBack: z.boolean(),
});
export type RecheckArea = z.infer<typeof recheckArea>;
export type RecheckScope = z.infer<typeof recheckScope>;
