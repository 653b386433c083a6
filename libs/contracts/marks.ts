import { z } from 'zod';
import { MARK_FIELDS } from '../fastener';
import { dayText, verdict } from './common';
import { partRef } from './ruling';

/** What a hand lens shows when no number can be read; lengths in millimetres. */
export const marks = z.object({
  headMarks: z.string().max(60).nullable().default(null),
  diameterMm: z.number().positive().max(200).nullable().default(null),
  lengthMm: z.number().positive().max(2_000).nullable().default(null),
  grooved: z.boolean().nullable().default(null),
  finish: z.string().max(60).nullable().default(null),
});
export type Marks = z.infer<typeof marks>;

/** POST /api/tickets/:id/tell: what a part in this position can be by its marks. Keeps nothing. */
export const tellRequest = z.object({ position: z.string(), marks, fittedOn: dayText.nullable().default(null) });
export type TellRequest = z.infer<typeof tellRequest>;

/** The parts that what was seen can be, best first, each with its verdict in that position. */
export const tellAnswer = z.object({
  candidates: z.array(
    z.object({
      part: partRef,
      /** null while the unit's line is not known */
      verdict: verdict.nullable(),
      agrees: z.array(z.enum(MARK_FIELDS)),
      differs: z.array(z.enum(MARK_FIELDS)),
      sentence: z.string(),
      /** picking it asks for how it was told: no mark sets it apart from another candidate */
      asksHow: z.boolean(),
    }),
  ),
  ruledOut: z.array(z.object({ part: partRef, sentence: z.string() })),
  /** what to look at next to tell the two best apart; empty when there are no two */
  tellApart: z.array(z.string()),
  /** key of the one part it is by its marks; null while more than one is left, or too little was looked at */
  told: z.string().nullable(),
  finishAlone: z.boolean(),
  /** the verdict on the place as it would be recorded with all of these */
  joint: verdict.nullable(),
  /** said when all candidates get one verdict, so that none need be told from another */
  needless: z.string().nullable(),
  sentences: z.array(z.string()),
});
export type TellAnswer = z.infer<typeof tellAnswer>;
