import type { z } from 'zod';
import type { Address, Method, SentArguments } from './api-routes';
import { answered, keyFor, stillWorkedOn } from './unanswered';
import { ApiProblem, NO_CONNECTION, OTHER_AGE, readProblem } from './problem';

interface Loose {
  body?: unknown;
  version?: number;
  query?: Record<string, string | number | undefined>;
}

/**
 * Asks the API and checks its answer against the contract. Method, address, body, version and query are checked by the
 * compiler against the API's own description. Throws {@link ApiProblem} for a refusal, for a dead connection, and for an
 * answer that is not what the contract says, as a page has it that is older than the server.
 */
export async function request<T, M extends Method, const P extends Address<M>>(
  schema: z.ZodType<T>,
  method: M,
  path: P,
  ...[sent]: SentArguments<M, P>
): Promise<T> {
  return readAs(schema, await exchange(method, path, sent));
}

/** As {@link request}, for routes whose answer is not looked at. */
export function send<M extends Method, const P extends Address<M>>(
  method: M,
  path: P,
  ...[sent]: SentArguments<M, P>
): Promise<unknown> {
  return exchange(method, path, sent);
}

/** As {@link send}, for what must still go out while the page is left; nobody is there to hear whether it arrived. */
export function sendLeaving<M extends Method, const P extends Address<M>>(
  method: M,
  path: P,
  ...[sent]: SentArguments<M, P>
): void {
  const { body, ...rest }: Loose = sent ?? {};
  fetch(address(path), {
    method,
    keepalive: true,
    credentials: 'same-origin',
    headers: headersOf({ body, ...rest }),
    body: JSON.stringify(body),
  }).catch(() => undefined);
}

/** As {@link send}, for a change whose address was put together from an act that is already checked. */
export function sendAct(base: string, act: { method: Method; path: string; body?: unknown }, version?: number) {
  return exchange(act.method, base + act.path, { body: act.body, version });
}

/** The answer as the contract has it. */
export function readAs<T>(schema: z.ZodType<T>, answer: unknown): T {
  const parsed = schema.safeParse(answer);
  if (parsed.success) return parsed.data;
  throw new ApiProblem(OTHER_AGE, parsed.error);
}

async function exchange(method: Method, path: string, options: Loose = {}): Promise<unknown> {
  const repeatable = method !== 'GET' && REPEATABLE.test(path);
  const change = JSON.stringify([method, path, options]);
  const key: Record<string, string> = repeatable ? { 'idempotency-key': keyFor(change) } : {};
  const ask = () =>
    fetch(address(path, options.query), {
      method,
      credentials: 'same-origin',
      headers: { ...headersOf(options), ...key },
      body: options.body === undefined ? undefined : JSON.stringify(options.body),
    });
  const response = await ask()
    .catch((error: unknown) => {
      if (!repeatable) throw error;
      return later(AGAIN_AFTER_MS).then(ask);
    })
    .catch(() => {
      throw new ApiProblem(NO_CONNECTION);
    });
  const text = await response.text();
  const body = readJson(text);
  const problem = response.ok ? null : readProblem(response.status, body);
  if (repeatable && problem?.type === 'still-running') stillWorkedOn(change);
  else if (repeatable && !ANSWER_UNKNOWN.has(response.status)) answered(change);
  if (problem !== null) throw new ApiProblem(problem);
  return body;
}

/** Whether it was done is not known: the way to the server broke. */
const ANSWER_UNKNOWN: ReadonlySet<number> = new Set([502, 503, 504]);

/** Sends one file as a form and checks the answer against the contract. */
export function sendFile<T>(
  schema: z.ZodType<T>,
  path: Address<'POST'>,
  file: File,
  query: Loose['query'],
): Promise<T> {
  const form = new FormData();
  form.append('file', file, file.name);
  return sendForm(schema, path, form, query);
}

/** Sends a photo with its fields; the fields go first, as the server reads them before the file. */
export function sendPhoto<T>(
  schema: z.ZodType<T>,
  path: Address<'POST'>,
  fields: Record<string, string>,
  photo: File,
): Promise<T> {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  form.set('photo', photo);
  return sendForm(schema, path, form);
}

async function sendForm<T>(schema: z.ZodType<T>, path: string, form: FormData, query?: Loose['query']): Promise<T> {
  const response = await fetch(address(path, query), { method: 'POST', credentials: 'same-origin', body: form }).catch(
    () => {
      throw new ApiProblem(NO_CONNECTION);
    },
  );
  const body = readJson(await response.text());
  if (!response.ok) throw new ApiProblem(readProblem(response.status, body));
  return readAs(schema, body);
}

/** When the line breaks nobody knows whether the request arrived; under the same key it can safely be sent once more. */
const AGAIN_AFTER_MS = 700;
/** Where the server keeps answers by key. */
const REPEATABLE = /^\/(tickets|bulletins|callbacks|shelf)\b/;

const later = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

function headersOf({ body, version }: Loose): Record<string, string> {
  return {
    accept: 'application/json',
    ...(body === undefined ? {} : { 'content-type': 'application/json' }),
    ...(version === undefined ? {} : { 'if-match': `"${version}"` }),
  };
}

/** Path below `/api` with its query; parameters that are undefined or empty are left out. */
export function address(path: string, query: Loose['query'] = {}): string {
  const pairs = Object.entries(query).filter(([, value]) => value !== undefined && value !== '');
  const search = new URLSearchParams(pairs.map(([name, value]) => [name, String(value)])).toString();
  return `/api${path}${search ? `?${search}` : ''}`;
}

function readJson(text: string): unknown {
  if (text === '') return null;
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return null;
  }
}
