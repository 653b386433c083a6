import { z } from 'zod';
import { instantText, verdict } from './common';

/** What of a unit may be known otherwise today than at an earlier moment. */
export const knownOtherwise = z.enum(['line', 'model', 'options', 'serial', 'build-days']);
export type KnownOtherwise = z.infer<typeof knownOtherwise>;

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
  /** the place it speaks of, such as `Shear pin, left` */
  where: z.string().nullable(),
  /** the number of the part it speaks of */
  part: z.string().nullable(),
  /** the verdict that place has today, and the revision it was judged under; null where none is fitted or judged */
  now: z.object({ verdict, revision: z.int().nullable() }).nullable(),
  /**
   * what was right in that place's position by the papers in force that day, as the shop knew them at that moment, for the
   * unit as it was known at that moment; whether the answer of today is the same; and what of the unit is known otherwise
   * today. Null where the entry speaks of no place of the line that the unit was known to be of.
   */
  ruling: z.object({ sentence: z.string(), sameToday: z.boolean(), otherwise: z.array(knownOtherwise) }).nullable(),
  change: z.record(z.string(), z.unknown()),
});
export type TrailEntry = z.infer<typeof trailEntry>;

/** GET /api/units/:id/trail?after= : oldest first, pages of 200; `next` is the `after` of the next page. */
export const unitTrail = z.object({ items: z.array(trailEntry), next: z.string().nullable() });
export type UnitTrail = z.infer<typeof unitTrail>;
