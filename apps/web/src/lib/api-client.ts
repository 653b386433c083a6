import type { z } from 'zod';
import { ApiProblem, NO_CONNECTION, OTHER_AGE, readProblem } from './problem';

export interface RequestOptions {
  body?: unknown;
  /** version of the thing that is changed, as it was last seen */
  version?: number;
  query?: Record<string, string | number | undefined>;
}

type Method = 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';

/**
 * Asks the API and checks its answer against the contract. Throws {@link ApiProblem} for a refusal, for a dead
 * connection, and for an answer that is not what the contract says, as a page has it that is older than the server.
 */
export async function request<T>(schema: z.ZodType<T>, method: Method, path: string, options: RequestOptions = {}) {
  const parsed = schema.safeParse(await send(method, path, options));
  if (parsed.success) return parsed.data;
  throw new ApiProblem(OTHER_AGE, parsed.error);
}

/** As {@link request}, for routes whose answer is not looked at. */
export async function send(method: Method, path: string, options: RequestOptions = {}): Promise<unknown> {
  const repeatable = method !== 'GET' && REPEATABLE.test(path);
  const key: Record<string, string> = repeatable ? { 'idempotency-key': newKey() } : {};
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
  if (!response.ok) throw new ApiProblem(readProblem(response.status, body));
  return body;
}

/** Sends one file as a form and checks the answer against the contract. */
export async function sendFile<T>(
  schema: z.ZodType<T>,
  path: string,
  file: File,
  query: RequestOptions['query'],
): Promise<T> {
  const form = new FormData();
  form.append('file', file, file.name);
  const response = await fetch(address(path, query), { method: 'POST', credentials: 'same-origin', body: form }).catch(
    () => {
      throw new ApiProblem(NO_CONNECTION);
    },
  );
  const body = readJson(await response.text());
  if (!response.ok) throw new ApiProblem(readProblem(response.status, body));
  const parsed = schema.safeParse(body);
  if (parsed.success) return parsed.data;
  throw new ApiProblem(OTHER_AGE, parsed.error);
}

/** When the line breaks nobody knows whether the request arrived; under the same key it can safely be sent once more. */
const AGAIN_AFTER_MS = 700;
/** Where the server keeps answers by key. */
const REPEATABLE = /^\/(tickets|bulletins|callbacks|shelf)\b/;

const later = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** 128 random bits as text; works over plain http too, where a browser offers no ready-made ids. */
function newKey(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

function headersOf({ body, version }: RequestOptions): Record<string, string> {
  return {
    accept: 'application/json',
    ...(body === undefined ? {} : { 'content-type': 'application/json' }),
    ...(version === undefined ? {} : { 'if-match': `"${version}"` }),
  };
}

/** Path below `/api` with its query; parameters that are undefined or empty are left out. */
export function address(path: string, query: RequestOptions['query'] = {}): string {
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
