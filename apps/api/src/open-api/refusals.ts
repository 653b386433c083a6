import { TITLES } from '../http/problem.filter';
import type { Operation } from './operations';
import type { JsonSchema } from './components';

const WHY: Readonly<Record<number, { type: string; detail: string }>> = {
  400: { type: 'bad-input', detail: 'complaint: expected at most 2000 characters.' },
  401: { type: 'not-signed-in', detail: 'Sign in first.' },
  403: { type: 'not-allowed', detail: 'A technician may not do this.' },
  404: { type: 'not-found', detail: "There is nothing under '4711'." },
  409: { type: 'wrong-stage', detail: 'The ticket is closed.' },
  412: { type: 'stale', detail: 'Somebody else changed this first.' },
  413: { type: 'bad-request', detail: 'Request body is too large' },
  422: { type: 'key-reused', detail: 'This Idempotency-Key was used for another request; take a new one.' },
  428: { type: 'version-missing', detail: 'Name the version this change was made on, as If-Match: "7".' },
  429: { type: 'too-many-tries', detail: 'Too many tries; try again in 4 s.' },
  503: { type: 'database-away', detail: 'The database does not answer; try again in a moment.' },
};

/** Statuses with which an operation can refuse, beside what it answers. */
export function refusalsOf(operation: Operation): readonly number[] {
  const { permission, body, query, pathParameters, needsVersion, repeatable, method } = operation;
  const writes = method !== 'GET';
  return [
    ...(body || query || needsVersion || repeatable ? [400] : []),
    ...(permission === 'open' && method === 'GET' ? [] : [401]),
    ...(permission === 'open' ? (writes ? [403] : []) : [403]),
    ...(pathParameters.length > 0 ? [404] : []),
    ...(writes ? [409] : []),
    ...(needsVersion ? [412] : []),
    ...(body ? [413] : []),
    ...(repeatable ? [422] : []),
    ...(needsVersion ? [428] : []),
    429,
    503,
  ];
}

/** Name of the shared answer for a status. */
export const refusalName = (status: number): string => `Refused${status}`;

/** The shared answers: problem details (RFC 9457), each with an example. */
export function refusalResponses(problem: JsonSchema): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(WHY).map(([status, { type, detail }]) => [
      refusalName(Number(status)),
      {
        description: `${TITLES[Number(status)]}.`,
        ...(status === '429' || status === '503' ? { headers: { 'Retry-After': RETRY_AFTER } } : {}),
        content: {
          'application/problem+json': {
            schema: problem,
            example: { type, title: TITLES[Number(status)], status: Number(status), detail },
          },
        },
      },
    ]),
  );
}

const RETRY_AFTER = { description: 'Seconds to wait before the next try.', schema: { type: 'integer', minimum: 0 } };
