import type { z } from 'zod';
import { shapeWords } from './shape-words';

/** What keeps an input from being of a shape: where, what stands there, and what is accepted, as the end of a sentence. */
export interface ShapeProblem {
  readonly path: readonly (string | number)[];
  /** Undefined where nothing stands. It may be a secret, so who shows it decides. */
  readonly value: unknown;
  /** Without a full stop: `must be a day that exists, written YYYY-MM-DD`. */
  readonly words: string;
}

export type ReadShape<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly [ShapeProblem, ...ShapeProblem[]] };

/**
 * Reads an input by a schema: the value, or every problem in plain words. A schema's own words go first; where it has
 * none, ours stand in place of the library's.
 */
export function readShape<S extends z.ZodType>(schema: S, input: unknown): ReadShape<z.output<S>> {
  const read = schema.safeParse(input, { error: shapeWords });
  if (read.success) return { ok: true, value: read.data };
  const problems = read.error.issues.map(({ path, message }) => ({
    path: path.map((step) => (typeof step === 'number' ? step : String(step))),
    value: valueAt(input, path),
    words: message,
  }));
  return { ok: false, problems: problems as unknown as readonly [ShapeProblem, ...ShapeProblem[]] };
}

/** A problem of a file, whose values may be shown: `"P100" will not do: must be a list.` */
export function sayShape({ value, words }: ShapeProblem): string {
  const shown = value === undefined ? 'nothing' : clip(JSON.stringify(value) ?? typeof value);
  return `${shown} will not do: ${words}.`;
}

/** The same with where it stands: `built.from: 2015 will not do: must be a text.` */
export function sayAt(problem: ShapeProblem): string {
  return problem.path.length === 0 ? sayShape(problem) : `${problem.path.join('.')}: ${sayShape(problem)}`;
}

/** What a named field must be, as the end of a sentence: a schema's own words may say no more than what is accepted. */
export function demandOf({ words }: ShapeProblem): string {
  return words.startsWith('must ') ? words : `must be ${words}`;
}

/** A value cut to what a sentence can hold. */
export function clip(text: string): string {
  return text.length > 80 ? `${text.slice(0, 77)}...` : text;
}

/** What stands at a path; undefined where nothing does. */
export function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined,
    root,
  );
}
