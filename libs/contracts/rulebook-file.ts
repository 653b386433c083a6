import { z } from 'zod';
import { SerialSchemeSchema, StandardEditionSchema, type ShopData } from '../build-date';
import { fastenerSpecSchema, shearJointSchema } from '../fastener';
import {
  dayText as civilDay,
  fitRuleFile,
  instantText as utcInstant,
  partKeyText,
  rulebookFile,
  rulebookFromFile,
  sourceFile,
  standingFile,
  supersessionFile,
  usualStanding,
  type Rulebook,
  type RulebookFile,
} from '../fit-rules';
import { numberRulesSchema, type NumberRules } from '../part-number';

/** Stands at the head of every rulebook file, so that a program knows what it holds before it reads on. */
export const RULEBOOK_FORMAT = 'revright-rulebook';
/** Rises only when a file of the version before could be misunderstood; new optional fields do not raise it. */
export const RULEBOOK_VERSION = 1;

const words = (most: number) =>
  z.string().trim().min(1, 'must not be empty').max(most, `has at most ${most} characters`);
const code = words(80);

/** One maker and how it writes part numbers. Its code is the first half of every part key. */
export const makerEntry = z.strictObject({
  code: numberRulesSchema.shape.makerCode,
  name: words(200),
  numberRules: numberRulesSchema.omit({ makerCode: true }),
});

/** One position of a line, in the order the shop looks at them. `places` names each place; a position has at least one. */
export const positionEntry = z.strictObject({
  code,
  name: words(200),
  assembly: words(200),
  places: z.array(words(80)).min(1, 'must name at least one place').max(60),
  /** Where a shear fastener works; null for a position that takes none. */
  joint: shearJointSchema.nullable().default(null),
  /** Where its dot sits on the line's sketch, in a box of 100 by 60. */
  sketchX: z.number().min(0).max(100).default(0),
  sketchY: z.number().min(0).max(60).default(0),
});

/** One product line. `producedUntil` is the first day on which it was no longer made; null while it is. */
export const lineEntry = z.strictObject({
  code,
  maker: code,
  name: words(200),
  kind: z.string().max(80).default(''),
  producedFrom: civilDay,
  producedUntil: civilDay.nullable().default(null),
  sketch: z.string().max(20_000).default(''),
  models: z
    .array(z.strictObject({ number: code, name: z.string().max(200).default('') }))
    .max(500)
    .default([]),
  options: z
    .array(z.strictObject({ code, name: z.string().max(200).default('') }))
    .max(60)
    .default([]),
  positions: z.array(positionEntry).max(500).default([]),
});

/** One part of the catalogue. `number` is as the maker prints it; `key` is what rules name. */
export const partEntry = z.strictObject({
  key: partKeyText,
  number: words(60),
  name: z.string().max(200).default(''),
  fastener: fastenerSpecSchema.nullable().default(null),
  /** In minor units of the shop's one currency. */
  priceMinor: z.int().min(0).max(100_000_000).nullable().default(null),
});

/** A paper, with what the shop did with it. A withdrawn paper stays in the file: older verdicts rest on it. */
export const sourceEntry = sourceFile.extend({
  summary: z.string().max(4_000).default(''),
  publishedAt: utcInstant.nullable().default(null),
  withdrawn: z
    .strictObject({ at: utcInstant, why: z.string().max(1_000) })
    .nullable()
    .default(null),
});

/**
 * All that a shop holds true about parts, in one file: enough to judge any unit by the papers of any day, as known at
 * any instant. It holds no owner, unit or ticket. Every list but `rules` and `sources` may be left out.
 */
export const rulebookDocument = z.strictObject({
  $schema: z.string().optional(),
  format: z.literal(RULEBOOK_FORMAT, `must be "${RULEBOOK_FORMAT}"`),
  version: z.literal(RULEBOOK_VERSION, `must be ${RULEBOOK_VERSION}, the only version there is`),
  makers: z.array(makerEntry).max(1_000).default([]),
  serialSchemes: z.array(SerialSchemeSchema).max(5_000).default([]),
  standardEditions: z.array(StandardEditionSchema).max(5_000).default([]),
  lines: z.array(lineEntry).max(5_000).default([]),
  parts: z.array(partEntry).max(500_000).default([]),
  sources: z.array(sourceEntry),
  rules: z.array(fitRuleFile),
  supersessions: z.array(supersessionFile).default([]),
  standing: standingFile.default({ ...usualStanding }),
});
export type RulebookDocument = z.infer<typeof rulebookDocument>;
/** The same as a person may write it, with everything left out that has a default. */
export type RulebookDocumentInput = z.input<typeof rulebookDocument>;

/** The part of a document that the fit rules read. */
export function rulesPartOf({ rules, sources, supersessions, standing }: RulebookDocument): RulebookFile {
  const papers = sources.map(({ summary: _summary, publishedAt: _at, withdrawn: _withdrawn, ...paper }) => paper);
  return rulebookFile.parse({ rules, sources: papers, supersessions, standing });
}

/** The rulebook of a checked document, ready to be judged by. */
export function rulebookOfDocument(document: RulebookDocument): Rulebook {
  return rulebookFromFile(rulesPartOf(document));
}

/** What of a checked document build dates are read by. */
export function shopDataOfDocument({ serialSchemes, standardEditions }: RulebookDocument): ShopData {
  return { serialSchemes, standardEditions };
}

/** A maker's number rules as the part number library takes them. */
export function numberRulesOf({ code: makerCode, numberRules }: RulebookDocument['makers'][number]): NumberRules {
  return { makerCode, ...numberRules };
}
