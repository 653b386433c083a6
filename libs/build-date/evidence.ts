import { z } from 'zod';
import { PartialDateSchema, WrittenDaySchema } from './written-days';

/** Why a person takes a piece of evidence out of the reckoning, and who. It stays on record. */
export const SetAsideSchema = z.object({ reason: z.string().trim().min(1).max(500), by: z.string().min(1).max(120) });
export type SetAside = z.infer<typeof SetAsideSchema>;

const common = { id: z.string().min(1).max(80), setAside: SetAsideSchema.optional() };
const transcript = (max: number) => z.string().trim().min(1).max(max);

/** A serial number, read by the maker's serial schemes. */
export const SerialEvidenceSchema = z.object({
  ...common,
  kind: z.literal('serial-scheme'),
  maker: z.string().min(1).max(120),
  line: z.string().max(120).optional(),
  serial: transcript(40),
});

/** A build date printed on the data plate, as precise as it is printed. */
export const PrintedDateEvidenceSchema = z.object({
  ...common,
  kind: z.literal('printed-date'),
  date: PartialDateSchema,
});

/** The edition of a standard named on the plate: the machine is not older than the edition. */
export const StandardEditionEvidenceSchema = z.object({
  ...common,
  kind: z.literal('standard-edition'),
  standard: transcript(80),
  edition: z.string().regex(/^\d{4}$/, 'an edition is named by its four-digit year, such as 2005'),
});

/** The emission family code of the engine, 12 characters; the first tells the model year of the engine. */
export const EngineFamilyEvidenceSchema = z.object({
  ...common,
  kind: z.literal('engine-family'),
  family: transcript(20),
  /** Small spark-ignition engines came under the rules with model year 1997, which drops earlier readings. */
  engine: z.enum(['small-spark-ignition', 'other']).default('other'),
});

/** A 17-character vehicle number, such as on a towed machine that is registered as a trailer. */
export const VinEvidenceSchema = z.object({
  ...common,
  kind: z.literal('vin'),
  vin: transcript(20),
  /** `light`: car, or truck or multipurpose vehicle up to 10,000 lb; only there position 7 tells the 30-year cycle. */
  vehicle: z.enum(['light', 'other']).default('other'),
  /** Markets outside North America may leave the check digit out. */
  checkDigit: z.enum(['required', 'not-used']).default('required'),
});

/** Week and year at the end of a tyre's identification code: four digits since 2000, three before. */
export const TyreCodeEvidenceSchema = z.object({ ...common, kind: z.literal('tyre-code'), code: transcript(8) });

/** A date stamped on a part: the machine is not older than its parts. */
export const PartStampEvidenceSchema = z.object({
  ...common,
  kind: z.literal('part-stamp'),
  part: transcript(120),
  date: PartialDateSchema,
});

/** First and last production of the model, both included; at least one is known. */
export const ProductionSpanEvidenceSchema = z
  .object({
    ...common,
    kind: z.literal('production-span'),
    first: PartialDateSchema.nullable().default(null),
    last: PartialDateSchema.nullable().default(null),
  })
  .refine((span) => span.first !== null || span.last !== null, 'give the first production date, the last, or both');

/** A receipt or registration: the machine is not younger than its sale. */
export const ReceiptEvidenceSchema = z.object({ ...common, kind: z.literal('receipt'), date: PartialDateSchema });

/** The day the shop first saw the unit: the machine is not younger. */
export const FirstSeenEvidenceSchema = z.object({ ...common, kind: z.literal('first-seen'), on: WrittenDaySchema });

/** One piece of evidence of a build date, as it was read; JSON-safe, days as text. */
export const EvidenceSchema = z.discriminatedUnion('kind', [
  SerialEvidenceSchema,
  PrintedDateEvidenceSchema,
  StandardEditionEvidenceSchema,
  EngineFamilyEvidenceSchema,
  VinEvidenceSchema,
  TyreCodeEvidenceSchema,
  PartStampEvidenceSchema,
  ProductionSpanEvidenceSchema,
  ReceiptEvidenceSchema,
  FirstSeenEvidenceSchema,
]);
export type Evidence = z.infer<typeof EvidenceSchema>;
export type EvidenceKind = Evidence['kind'];
export type EvidenceOf<K extends EvidenceKind> = Extract<Evidence, { kind: K }>;

/** Most pieces one unit may have; conflicts are complete up to this many. */
export const MOST_PIECES = 20;

/** All evidence of one unit; ids are unique. */
export const EvidenceListSchema = z
  .array(EvidenceSchema)
  .max(MOST_PIECES)
  .refine((list) => new Set(list.map((piece) => piece.id)).size === list.length, 'every piece needs an id of its own');

export const EVIDENCE_KINDS = [
  'serial-scheme',
  'printed-date',
  'standard-edition',
  'engine-family',
  'vin',
  'tyre-code',
  'part-stamp',
  'production-span',
  'receipt',
  'first-seen',
] as const satisfies readonly EvidenceKind[];
