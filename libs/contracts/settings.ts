import { z } from 'zod';
import { thresholdSchema } from '../fastener';
import { SOURCE_KINDS } from './bulletin';
import { rowId, version } from './common';

/** How much each kind of paper counts against another; the higher decides. */
export const standing = z.record(z.enum(SOURCE_KINDS), z.int().min(0).max(1_000));

/** GET /api/settings: what the shop has settled for itself, where it can change an answer. */
export const shopSettings = z.object({
  lookBackMonths: z.int(),
  standing,
  strengthThreshold: thresholdSchema,
  keepShelf: z.boolean(),
  version,
});
export type ShopSettings = z.infer<typeof shopSettings>;

/** PATCH /api/settings (If-Match): a field left out stays as it is. Every change starts a recheck of everything. */
export const changeSettings = z.object({
  lookBackMonths: z
    .int()
    .min(0, { error: 'expected 0 to 600 months' })
    .max(600, { error: 'expected 0 to 600 months' })
    .optional(),
  standing: standing.optional(),
  /** ratios of torque that count as required, both included; no standard gives them */
  strengthThreshold: thresholdSchema.optional(),
  /** whether picking takes parts from a shelf that is counted; it changes no answer, so it starts no recheck */
  keepShelf: z.boolean().optional(),
});
export type ChangeSettings = z.infer<typeof changeSettings>;

/** What changing answers: how things stand now, and the recheck it has started; null where nothing was different. */
export const changedSettings = shopSettings.extend({ recheckId: rowId.nullable() });
export type ChangedSettings = z.infer<typeof changedSettings>;
