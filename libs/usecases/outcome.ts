/** Why a use case refused: a stable code and one sentence for a person. The edge chooses the HTTP status from the code. */
export type RefusalCode =
  | 'not-found'
  | 'not-allowed'
  | 'bad-input'
  | 'gate-closed'
  | 'wrong-stage'
  | 'stale'
  | 'already-done'
  | 'conflict'
  | 'not-ready';

export interface Refusal {
  readonly code: RefusalCode;
  /** One sentence naming the field, the value and what would be accepted. */
  readonly detail: string;
  readonly field?: string;
  /** For a closed gate: every point still asked for. */
  readonly missing?: readonly string[];
  /** For a conflict or a stale version: the present state. */
  readonly current?: unknown;
}

/** What a use case answers: an expected failure is data, never an exception. */
export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly refusal: Refusal };

export function done<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function refused(
  code: RefusalCode,
  detail: string,
  more: Omit<Refusal, 'code' | 'detail'> = {},
): Outcome<never> {
  return { ok: false, refusal: { code, detail, ...more } };
}
