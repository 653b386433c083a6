import { z } from 'zod';
import { fastenerSpecSchema, headMarksSchema, lengthMm } from './fastener-spec';

const NUMBER = 'a part number';
const YES_NO = 'true, false, or null for not looked at';

/** What a calliper and a hand lens show; null means not looked at. */
export const marksSeenSchema = z.object({
  headMarks: headMarksSchema.nullable().default(null),
  diameterMm: lengthMm.nullable().default(null),
  lengthMm: lengthMm.nullable().default(null),
  threaded: z.boolean({ error: YES_NO }).nullable().default(null),
  pitchMm: lengthMm.nullable().default(null),
  grooved: z.boolean({ error: YES_NO }).nullable().default(null),
  grooveRootDiameterMm: lengthMm.nullable().default(null),
  crossDrilled: z.boolean({ error: YES_NO }).nullable().default(null),
  finish: z.string({ error: 'the finish in words' }).nullable().default(null),
});
export type MarksSeen = z.infer<typeof marksSeenSchema>;
/** The same with everything not looked at left out. */
export type MarksSeenInput = z.input<typeof marksSeenSchema>;

/** A part the shop knows the shape of. */
export const cataloguePartSchema = z.object({
  partNumber: z.string({ error: NUMBER }).min(1, { error: NUMBER }),
  name: z.string({ error: 'the name of the part' }),
  spec: fastenerSpecSchema,
});
export type CataloguePart = z.infer<typeof cataloguePartSchema>;
export type CataloguePartInput = z.input<typeof cataloguePartSchema>;

/** What is looked at, in the order a bench does it: cheapest first. The finish comes last and never decides. */
export const MARK_FIELDS = [
  'head-marks',
  'thread',
  'groove',
  'cross-hole',
  'diameter',
  'length',
  'pitch',
  'finish',
] as const;
export type MarkField = (typeof MARK_FIELDS)[number];

/** A part it can be. */
export interface MarkCandidate {
  partNumber: string;
  name: string;
  agrees: MarkField[];
  /** Only what can go missing or change: a head mark worn off, another finish. */
  differs: MarkField[];
  sentence: string;
}

/** The catalogue's candidates for what was seen. */
export interface MarksAnswer {
  /** Set when one candidate is left, something other than the finish speaks for it, and its head mark is not missing. */
  told: string | null;
  /** Best first. */
  candidates: MarkCandidate[];
  ruledOut: { partNumber: string; field: MarkField; sentence: string }[];
  /** How to tell the two best apart; null when fewer than two are left. */
  tellApart: { between: [string, string]; look: { field: MarkField | 'grade'; sentence: string }[] } | null;
  /** True when the finish is all that was looked at. */
  finishAlone: boolean;
  sentences: string[];
}

/** How far a reading may be off, inclusive; shanks are made a little under their nominal size. Our choice. */
export const READING_TOLERANCE_MM = { diameter: 0.35, length: 1.5, pitch: 0.1, grooveRoot: 0.35 } as const;
