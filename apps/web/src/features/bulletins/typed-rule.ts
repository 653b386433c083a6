import { z } from 'zod';
import { formatDay, parseDay } from '../../../../../libs/day';
import type { Action, BarReason } from '../../../../../libs/fit-rules';

export interface TypedBar {
  part: string;
  reason: BarReason;
  note: string;
  voidsWarranty: boolean;
}

/** A fit rule as it stands in the form: numbers as typed, first and last build day both included. */
export interface TypedRule {
  key: string;
  line: string;
  models: string[];
  options: Record<string, boolean>;
  positions: string[];
  builtFirst: string;
  builtLast: string;
  required: string;
  /** several, parted by commas */
  allowed: string;
  barred: TypedBar[];
  action: Action;
  replaces: string[];
  /** what the form has no field for, such as a serial span; goes back as it came */
  rest: Record<string, unknown>;
}

export const EMPTY_RULE: Omit<TypedRule, 'key'> = {
  line: '',
  models: [],
  options: {},
  positions: [],
  builtFirst: '',
  builtLast: '',
  required: '',
  allowed: '',
  barred: [],
  action: 'call-back',
  replaces: [],
  rest: {},
};

const span = z.object({ from: z.string().nullable(), to: z.string().nullable() });
const wireRule = z.looseObject({
  key: z.string(),
  line: z.string().default(''),
  models: z.array(z.string()).default([]),
  options: z.array(z.object({ option: z.string(), fitted: z.boolean() })).default([]),
  positions: z.array(z.string()).default([]),
  built: span.default({ from: null, to: null }),
  required: z.string().nullable().default(null),
  allowed: z.array(z.string()).default([]),
  barred: z
    .array(
      z.object({
        part: z.string(),
        reason: z.custom<BarReason>((value) => typeof value === 'string'),
        note: z.string().default(''),
        voidsWarranty: z.boolean().default(false),
      }),
    )
    .default([]),
  action: z.custom<Action>((value) => typeof value === 'string').default('call-back'),
  replaces: z.array(z.string()).default([]),
});

/** The day before: turns a closed-open end into the last day of the span. Empty for an open side. */
export function lastDayOf(to: string | null): string {
  const value = to === null ? null : parseDay(to);
  return value === null ? '' : formatDay(value - 1);
}

/** The day after: turns a last day into a closed-open end. Null for an empty text. */
export function endAfter(last: string): string | null {
  const value = parseDay(last);
  return value === null ? null : formatDay(value + 1);
}

/** A rule of a draft as the form shows it; null when it is no rule at all. */
export function typedFromWire(open: unknown): TypedRule | null {
  const parsed = wireRule.safeParse(open);
  if (!parsed.success) return null;
  const { key, line, models, options, positions, built, required, allowed, barred, action, replaces, ...rest } =
    parsed.data;
  return {
    key,
    line,
    models,
    options: Object.fromEntries(options.map(({ option, fitted }) => [option, fitted])),
    positions,
    builtFirst: built.from ?? '',
    builtLast: lastDayOf(built.to),
    required: required ?? '',
    allowed: allowed.join(', '),
    barred,
    action,
    replaces,
    rest,
  };
}

/** Numbers in a text, parted by commas, semicolons or line ends. */
export function listed(text: string): string[] {
  return text
    .split(/[,;\n]/)
    .map((one) => one.trim())
    .filter((one) => one !== '');
}

/** Every part a rule names, as typed. */
export function partsNamed(rule: TypedRule): string[] {
  return [...listed(rule.required), ...listed(rule.allowed), ...rule.barred.map(({ part }) => part.trim())].filter(
    (part) => part !== '',
  );
}

/** The rule as it goes over the wire. `keyOf` gives the part key of a number as typed. */
export function wireFromTyped(
  rule: TypedRule,
  inForceFrom: string,
  keyOf: (part: string) => string,
): { key: string } & Record<string, unknown> {
  return {
    serials: null,
    ...rule.rest,
    key: rule.key,
    line: rule.line,
    models: rule.models,
    options: Object.entries(rule.options).map(([option, fitted]) => ({ option, fitted })),
    positions: rule.positions,
    built: { from: rule.builtFirst || null, to: endAfter(rule.builtLast) },
    inForce: { from: inForceFrom, to: null },
    required: rule.required.trim() === '' ? null : keyOf(rule.required.trim()),
    allowed: listed(rule.allowed).map(keyOf),
    barred: rule.barred
      .filter(({ part }) => part.trim() !== '')
      .map(({ part, voidsWarranty, ...bar }) => ({
        ...bar,
        part: keyOf(part.trim()),
        ...(voidsWarranty ? { voidsWarranty } : {}),
      })),
    action: rule.action,
    replaces: rule.replaces,
  };
}

/** What a rule still needs before it can be kept, in a sentence; null when it is whole. */
export function ruleNeeds(rule: TypedRule): string | null {
  if (rule.line === '') return 'Pick the product line.';
  if (rule.positions.length === 0) return 'Tick at least one position.';
  if (partsNamed(rule).length === 0 && rule.replaces.length === 0)
    return 'Name a part that is required, allowed or barred.';
  if (rule.builtFirst && rule.builtLast && rule.builtFirst > rule.builtLast)
    return 'The last build day lies before the first.';
  return null;
}
