import { z } from 'zod';
import { fastenerSpecSchema, headMarksSchema, lengthMm } from './fastener-spec';
import type { Outcome } from './problem';

/** What a calliper and a hand lens show; null means not looked at. */
export const marksSeenSchema = z.object({
  headMarks: headMarksSchema.nullable().default(null),
  diameterMm: lengthMm.nullable().default(null),
  lengthMm: lengthMm.nullable().default(null),
  threaded: z.boolean().nullable().default(null),
  pitchMm: lengthMm.nullable().default(null),
  grooved: z.boolean().nullable().default(null),
  grooveRootDiameterMm: lengthMm.nullable().default(null),
  crossDrilled: z.boolean().nullable().default(null),
  finish: z.string().nullable().default(null),
});
export type MarksSeen = z.infer<typeof marksSeenSchema>;
export type MarksSeenInput = z.input<typeof marksSeenSchema>;

/** A part the shop knows the shape of. */
export const cataloguePartSchema = z.object({
  partNumber: z.string().min(1),
  name: z.string(),
  spec: fastenerSpecSchema,
});
export type CataloguePart = z.infer<typeof cataloguePartSchema>;
export type CataloguePartInput = z.input<typeof cataloguePartSchema>;

/** The marks that are looked at, in the order a bench does it: cheapest first. */
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

export interface MarkCandidate {
  partNumber: string;
  name: string;
  agrees: MarkField[];
  /** Only marks that can go missing or change: a head mark worn off, another finish. */
  differs: MarkField[];
  sentence: string;
}

export interface MarksAnswer {
  /** Set when one candidate is left and something other than the finish speaks for it. */
  told: string | null;
  candidates: MarkCandidate[];
  ruledOut: { partNumber: string; field: MarkField; sentence: string }[];
  /** How to tell the two best apart; null when fewer than two are left. */
  tellApart: { between: [string, string]; look: { field: MarkField | 'grade'; sentence: string }[] } | null;
  finishAlone: boolean;
  sentences: string[];
}

export declare function tellByMarks(marks: MarksSeenInput, catalogue: CataloguePartInput[]): Outcome<MarksAnswer>;
