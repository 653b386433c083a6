import { z } from 'zod';

/*
 * Words used here. Under head: distances along the fastener are counted from under its head (from the end that
 * goes in last where it has no head). Plane: a shear plane, where hub and shaft slide past each other.
 * The message of each check names what would be accepted; `problem.ts` turns it into a sentence.
 */

const LENGTH = 'a length in millimetres above 0';
const PLACE = 'a distance from under the head in millimetres, 0 or more';

/** A length in millimetres, above 0 and finite. */
export const lengthMm = z.number({ error: LENGTH }).positive({ error: LENGTH });
/** A distance from under the head in millimetres, 0 or more and finite. */
export const placeMm = z.number({ error: PLACE }).nonnegative({ error: PLACE });

/** The tables a grade is looked up in. */
export const GRADE_SYSTEMS = ['SAE J429', 'ISO 898-1', 'ASTM A307', 'pin material'] as const;
export const gradeSystemSchema = z.enum(GRADE_SYSTEMS, { error: `one of ${GRADE_SYSTEMS.join(', ')}` });
export type GradeSystem = z.infer<typeof gradeSystemSchema>;

/** One grade, class or material by name, such as `{ system: 'SAE J429', grade: '5' }`. */
export const gradeRefSchema = z.object({
  system: gradeSystemSchema,
  grade: z.string({ error: 'the name of a grade' }).min(1, { error: 'the name of a grade' }),
});
export type GradeRef = z.infer<typeof gradeRefSchema>;

const GRADE = 'a known grade with system and grade, or one-of with its candidates';

/** What is known of the grade: one grade, or the set it can be. A missing head mark is always a set. */
export const gradeSchema = z.discriminatedUnion(
  'kind',
  [
    z.object({ kind: z.literal('known'), ...gradeRefSchema.shape }),
    z.object({
      kind: z.literal('one-of'),
      candidates: z.array(gradeRefSchema, { error: GRADE }).min(1, { error: 'at least one grade it can be' }),
    }),
  ],
  { error: GRADE },
);
export type Grade = z.infer<typeof gradeSchema>;

const LINES = 'a whole number of lines from 1 to 12';

/** What the head shows: nothing, a number of radial lines, or a stamp such as `8.8`. */
export const headMarksSchema = z.discriminatedUnion(
  'kind',
  [
    z.object({ kind: z.literal('none') }),
    z.object({
      kind: z.literal('radial-lines'),
      count: z.number({ error: LINES }).int({ error: LINES }).min(1, { error: LINES }).max(12, { error: LINES }),
    }),
    z.object({
      kind: z.literal('stamp'),
      text: z.string({ error: 'the letters of the stamp' }).trim().min(1, { error: 'the letters of the stamp' }),
    }),
  ],
  { error: 'none, radial-lines with a count, or stamp with its text' },
);
export type HeadMarks = z.infer<typeof headMarksSchema>;

/** A turned groove: its middle lies `atMm` under the head, its bottom has the root diameter. */
export const grooveSchema = z.object(
  { rootDiameterMm: lengthMm, atMm: placeMm, widthMm: lengthMm },
  { error: 'a groove with rootDiameterMm, atMm and widthMm' },
);
/** A hole across the fastener, for a cotter or to weaken it; its axis lies `atMm` under the head. */
export const crossHoleSchema = z.object(
  { diameterMm: lengthMm, atMm: placeMm },
  { error: 'a cross hole with diameterMm and atMm' },
);
/** A thread from `startsAtMm` under the head to the end; null when it is not known where it starts. */
export const threadSchema = z.object(
  { pitchMm: lengthMm, startsAtMm: placeMm.nullable().default(null) },
  { error: 'a thread with pitchMm and startsAtMm' },
);

/** A shear fastener as the tables and a calliper describe it; null means not known, or not there for features. */
export const fastenerSpecSchema = z
  .object({
    diameterMm: lengthMm,
    lengthMm: lengthMm.nullable().default(null),
    thread: threadSchema.nullable().default(null),
    groove: grooveSchema.nullable().default(null),
    crossHole: crossHoleSchema.nullable().default(null),
    boreDiameterMm: lengthMm.nullable().default(null).describe('bore along the axis of a hollow pin'),
    grade: gradeSchema,
    headMarks: headMarksSchema.nullable().default(null),
    finish: z.string({ error: 'the finish in words' }).nullable().default(null),
  })
  .superRefine(checkFeatures);
export type FastenerSpec = z.infer<typeof fastenerSpecSchema>;
/** The same with everything left out that may be null. */
export type FastenerSpecInput = z.input<typeof fastenerSpecSchema>;

interface Features {
  diameterMm: number;
  lengthMm: number | null;
  thread: { pitchMm: number } | null;
  groove: { rootDiameterMm: number; atMm: number; widthMm: number } | null;
  crossHole: { diameterMm: number; atMm: number } | null;
  boreDiameterMm: number | null;
}

/** Features must lie inside the shank, and along it. */
function checkFeatures(spec: Features, context: z.core.$RefinementCtx): void {
  const below = (path: string[], value: number | undefined | null, limit: number, words: string): void => {
    if (value !== undefined && value !== null && value >= limit) {
      context.addIssue({ code: 'custom', path, message: `less than ${words} (${Number(limit.toFixed(3))} mm)` });
    }
  };
  below(['groove', 'rootDiameterMm'], spec.groove?.rootDiameterMm, spec.diameterMm, 'the diameter of the shank');
  below(['crossHole', 'diameterMm'], spec.crossHole?.diameterMm, spec.diameterMm, 'the diameter of the shank');
  below(['boreDiameterMm'], spec.boreDiameterMm, thinnest(spec), 'the thinnest outer diameter');
  below(['thread', 'pitchMm'], spec.thread?.pitchMm, spec.diameterMm / 2, 'half the diameter of the shank');
  if (spec.lengthMm === null) return;
  below(['groove', 'atMm'], spec.groove?.atMm, spec.lengthMm, 'the length of the fastener');
  below(['groove', 'widthMm'], spec.groove?.widthMm, spec.lengthMm, 'the length of the fastener');
  below(['crossHole', 'atMm'], spec.crossHole?.atMm, spec.lengthMm, 'the length of the fastener');
}

/** What a bore must stay inside of: the bottom of the groove and of the deepest thread profile in use. */
function thinnest({ diameterMm, groove, thread }: Features): number {
  return Math.min(groove?.rootDiameterMm ?? diameterMm, diameterMm - 1.299038 * (thread?.pitchMm ?? 0));
}
