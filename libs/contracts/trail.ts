import { z } from 'zod';
import { instantText } from './common';

/** One change that touched a unit, as the trail keeps it. */
export const trailEntry = z.object({
  /** place in the trail; of a verdict changed by a recheck, the place of the row that stands for its chunk */
  place: z.string(),
  at: instantText,
  /** null when the program itself did it */
  by: z.string().nullable(),
  act: z.string(),
  noun: z.string(),
  key: z.string(),
  /** the newest revision of the rulebook at that moment: what was known then */
  revision: z.int().nullable(),
  /** what the newest revision was made by, such as `publish of SB-12` */
  known: z.string().nullable(),
  change: z.record(z.string(), z.unknown()),
});
export type TrailEntry = z.infer<typeof trailEntry>;

/** GET /api/units/:id/trail?after= : oldest first, pages of 200; `next` is the `after` of the next page. */
export const unitTrail = z.object({ items: z.array(trailEntry), next: z.string().nullable() });
export type UnitTrail = z.infer<typeof unitTrail>;
