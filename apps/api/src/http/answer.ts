import type { Outcome, Refusal, RefusalCode } from '../../../../libs/usecases';
import { ProblemError } from './problem-error';

/** The only place where a refusal becomes an HTTP status. */
const STATUS: Readonly<Record<RefusalCode, number>> = {
  'not-found': 404,
  'not-allowed': 403,
  'bad-input': 400,
  'gate-closed': 409,
  'wrong-stage': 409,
  stale: 412,
  'already-done': 409,
  conflict: 409,
  'not-ready': 503,
};

/** The value of an outcome; a refusal leaves as problem details. */
export function answer<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw refusalError(outcome.refusal);
}

function refusalError({ code, detail, field, missing, current }: Refusal): ProblemError {
  return new ProblemError(STATUS[code], code, detail, {
    ...(field === undefined ? {} : { field }),
    ...(missing === undefined ? {} : { missing: [...missing] }),
    ...(current === undefined ? {} : { current }),
  });
}
