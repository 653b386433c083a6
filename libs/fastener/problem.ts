import type { z } from 'zod';
import { readShape } from '../shape';

/** Why an input was refused: which field, what stood there, what would be accepted, and the same as a sentence. */
export interface FastenerProblem {
  code: 'bad-value' | 'unknown-grade' | 'no-value-at-this-size' | 'does-not-reach' | 'no-yield-published';
  field: string;
  value: unknown;
  accepted: string;
  sentence: string;
}

/** A value, or the problems that kept it from being found (at least one). */
export type Outcome<T> = { ok: true; value: T } | { ok: false; problems: FastenerProblem[] };

/** Makes a problem with its sentence. */
export function problem(
  code: FastenerProblem['code'],
  field: string,
  value: unknown,
  accepted: string,
): FastenerProblem {
  return { code, field, value, accepted, sentence: `${field} is ${say(value)}; accepted is ${accepted}.` };
}

/** Checks an input against a schema; `name` heads the field's path, such as `fitted.diameterMm`. */
export function check<T>(schema: z.ZodType<T>, input: unknown, name: string): Outcome<T> {
  const read = readShape(schema, input);
  if (read.ok) return { ok: true, value: read.value };
  const problems = read.problems.map(({ path, value, words }) =>
    problem('bad-value', [name, ...path].join('.'), value, words.replace(/^must be /, '')),
  );
  return { ok: false, problems };
}

function say(value: unknown): string {
  if (value === undefined) return 'not given';
  if (typeof value === 'number' || value === null) return String(value);
  return JSON.stringify(value);
}
