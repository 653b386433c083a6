import { z } from 'zod';
import { parseDay } from '../day';
import { isPartKey, supersessionDirectionSchema } from '../part-number';
import { actions, barReasons } from './fit-rule';
import { sourceKinds } from './source';

const name = (what: string, most = 80) =>
  z.string().trim().min(1, `${what} must not be empty`).max(most, `${what} has at most ${most} characters`);

/** A civil day as `YYYY-MM-DD`. */
export const dayText = z
  .string()
  .refine((text) => parseDay(text) !== null, { error: 'must be a day that exists, written YYYY-MM-DD' });

/** An instant as ISO 8601 in UTC, such as `2026-03-01T09:30:00.000Z`. */
export const instantText = z.iso.datetime({ error: 'must be an instant in UTC, such as 2026-03-01T09:30:00.000Z' });

/** A part key on the wire: `MAKER/NUMBER`, in canonical form. */
export const partKeyText = z
  .string()
  .refine(isPartKey, { error: 'must be MAKER/NUMBER in canonical form, such as HOLM/70412B' });

const ordered = <T extends string>(span: { from: T | null; to: T | null }): boolean =>
  span.from === null || span.to === null || span.from < span.to;
const ENDS_LATE = { error: 'must end after it begins (the end itself is not included)' };

/** Days `from` up to, not including, `to`; null is an open side. */
export const daySpanFile = z
  .strictObject({ from: dayText.nullable(), to: dayText.nullable() })
  .refine(ordered, ENDS_LATE);
/** Instants `from` up to, not including, `to`; null is an open side. */
export const knownSpanFile = z
  .strictObject({ from: instantText.nullable(), to: instantText.nullable() })
  .refine((span) => span.from === null || span.to === null || Date.parse(span.from) < Date.parse(span.to), ENDS_LATE);
export const serialSpanFile = z
  .strictObject({
    scheme: name('a serial scheme'),
    from: z.string().max(40).nullable(),
    to: z.string().max(40).nullable(),
  })
  .refine(ordered, ENDS_LATE);

/** One version of one fit rule, as it stands in a file and goes over the wire. */
export const fitRuleFile = z
  .strictObject({
    key: name('a rule key'),
    version: z.int().min(1),
    line: name('a product line'),
    models: z.array(name('a model')).max(200),
    options: z.array(z.strictObject({ option: name('an option'), fitted: z.boolean() })).max(8),
    positions: z.array(name('a position')).min(1, 'must name at least one position').max(200),
    built: daySpanFile,
    serials: serialSpanFile.nullable(),
    inForce: daySpanFile,
    known: knownSpanFile,
    source: name('a source key'),
    required: partKeyText.nullable(),
    allowed: z.array(partKeyText).max(100),
    barred: z
      .array(
        z.strictObject({
          part: partKeyText,
          reason: z.enum(barReasons),
          note: z.string().max(400),
          voidsWarranty: z.literal(true).optional(),
        }),
      )
      .max(100),
    action: z.enum(actions),
    replaces: z.array(name('a rule key')).max(100),
  })
  .refine((rule) => rule.required !== null || rule.allowed.length + rule.barred.length + rule.replaces.length > 0, {
    error: 'must require, allow or bar a part, or replace a rule',
    path: ['required'],
  });
export type FitRuleFile = z.infer<typeof fitRuleFile>;

export const sourceFile = z.strictObject({
  key: name('a source key'),
  kind: z.enum(sourceKinds),
  publisher: name('a publisher', 120),
  number: name('a number'),
  title: name('a title', 200),
  issued: dayText,
  effective: dayText.nullable(),
  received: dayText,
});
export type SourceFile = z.infer<typeof sourceFile>;

export const supersessionFile = z
  .strictObject({
    from: partKeyText,
    to: partKeyText.nullable(),
    direction: supersessionDirectionSchema,
    known: knownSpanFile,
  })
  .refine((one) => (one.direction === 'dead') === (one.to === null), {
    error: 'must be null for a dead part and name a part otherwise',
    path: ['to'],
  });
export type SupersessionFile = z.infer<typeof supersessionFile>;

/** Every kind of source with its weight; the higher decides. */
export const standingFile = z.record(z.enum(sourceKinds), z.int().min(0).max(1000));

/** A whole rulebook in one file. `standing` may be left out: then the usual order holds. */
export const rulebookFile = z.strictObject({
  rules: z.array(fitRuleFile),
  sources: z.array(sourceFile),
  supersessions: z.array(supersessionFile),
  standing: standingFile.optional(),
});
export type RulebookFile = z.infer<typeof rulebookFile>;

/** What is known of one unit, as it stands in a file: options absent and serial null mean not known. */
export const unitFactsFile = z.strictObject({
  line: name('a product line'),
  model: name('a model').nullable(),
  options: z.record(z.string(), z.boolean()),
  serial: z.strictObject({ scheme: name('a serial scheme'), key: z.string().min(1).max(40).nullable() }).nullable(),
  built: z.array(daySpanFile).max(400),
});
export type UnitFactsFile = z.infer<typeof unitFactsFile>;
