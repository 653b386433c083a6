import type { OpenApiDocument } from '../../apps/api/src/open-api/document';
import type { Example } from '../../apps/api/src/open-api/examples';
import type { Role } from '../../libs/contracts';
import type { ApiShop, Caller } from '../api/api-shop';

/** What is asked of one operation, by its id in the document. */
export interface Asked {
  readonly path?: Readonly<Record<string, string | number>>;
  readonly query?: Readonly<Record<string, string | number>>;
  readonly body?: unknown;
  /** goes as the one file of a form */
  readonly file?: { readonly name: string; readonly text: string };
  /** in place of a body, for a route that takes a file */
  readonly form?: FormData;
  /** goes into If-Match */
  readonly version?: number;
  /** who asks; the manager unless said */
  readonly as?: Role | Caller;
}

export interface Called {
  readonly id: string;
  readonly status: number;
  readonly contentType: string;
  readonly asked: Asked;
  readonly body: unknown;
}

/** What a change that names a version answers when it names none, and when it names another. */
export interface Probe {
  readonly id: string;
  readonly without: number;
  readonly stale: number;
  /** how things stand, as the refusal of a stale change tells it */
  readonly current: unknown;
}

interface Place {
  readonly method: string;
  readonly path: string;
  /** what its body may name; null where it refuses every other name */
  readonly takes: ReadonlySet<string> | null;
}

/** By these what a body added would be known again, wherever it was kept. */
export const ADDED = { text: 'added-by-a-body', number: 987_654_321 } as const;

/** What the server settles and no body does, each with what is known again. */
const SET_BY_SERVER: Readonly<Record<string, unknown>> = {
  ...Object.fromEntries(
    ['role', 'verdict', 'state', 'stage', 'createdBy', 'number', 'by', 'name', 'passwordHash'].map((name) => [
      name,
      ADDED.text,
    ]),
  ),
  ...Object.fromEntries(['id', 'version', 'personId', 'locationId', 'revision'].map((name) => [name, ADDED.number])),
};

/** The names that a schema of the document has at its top, and null when it refuses all others. */
function namesIn(schema: Schema, named: Readonly<Record<string, Schema>>): ReadonlySet<string> | null {
  if (schema.$ref) return namesIn(named[schema.$ref.split('/').at(-1)!]!, named);
  if (schema.additionalProperties === false) return null;
  const parts = [...(schema.anyOf ?? []), ...(schema.oneOf ?? []), ...(schema.allOf ?? [])];
  const names = parts.map((part) => namesIn(part, named));
  if (names.includes(null)) return null;
  return new Set([...Object.keys(schema.properties ?? {}), ...names.flatMap((one) => [...one!])]);
}

interface Schema {
  readonly $ref?: string;
  readonly properties?: object;
  readonly additionalProperties?: unknown;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly allOf?: readonly Schema[];
}

/** Calls operations of the running API by their ids, and remembers what was asked and answered. */
export class Walk {
  readonly calls: Called[] = [];
  readonly probes: Probe[] = [];
  private readonly places = new Map<string, Place>();

  constructor(
    private readonly shop: ApiShop,
    document: OpenApiDocument,
  ) {
    const { schemas } = document['components'] as { schemas: Record<string, Schema> };
    for (const [path, item] of Object.entries(document.paths)) {
      for (const [method, { operationId, requestBody }] of Object.entries(item)) {
        const body = requestBody as { content: Record<string, { schema: Schema }> } | undefined;
        const takes = namesIn(body?.content['application/json']?.schema ?? {}, schemas);
        this.places.set(String(operationId), { method: method.toUpperCase(), path, takes });
      }
    }
  }

  /** Ids of every operation the document names. */
  get operations(): readonly string[] {
    return [...this.places.keys()];
  }

  /** Calls an operation, which must not refuse; answers its body. */
  async call<T = never>(id: string, asked: Asked = {}): Promise<T> {
    await this.probe(id, asked);
    const { status, body } = await this.ask(id, asked);
    if (status >= 400) throw new Error(`${id} answered ${status}: ${JSON.stringify(body)}`);
    return body as T;
  }

  /** Before a change is made on its version, it is tried without one and on one that nobody has seen. */
  private async probe(id: string, asked: Asked): Promise<void> {
    if (asked.version === undefined) return;
    const without = await this.exchange(id, { ...asked, version: undefined });
    const stale = await this.exchange(id, { ...asked, version: asked.version + 1_000 });
    const current = (stale.body as { current?: unknown } | null)?.current;
    this.probes.push({ id, without: without.status, stale: stale.status, current });
  }

  /** Calls an operation, whatever it answers. */
  async ask(id: string, asked: Asked): Promise<Called> {
    const called = await this.exchange(id, asked);
    this.calls.push(called);
    return called;
  }

  private async exchange(id: string, asked: Asked): Promise<Called> {
    const place = this.places.get(id);
    if (!place) throw new Error(`The document knows no operation '${id}'.`);
    const caller = typeof asked.as === 'object' ? asked.as : await this.shop.as(asked.as ?? 'manager');
    const query = asked.query
      ? `?${new URLSearchParams(Object.entries(asked.query).map(([name, value]) => [name, String(value)])).toString()}`
      : '';
    const path = place.path.replace(/\{(\w+)\}/g, (_, name: string) => encodeURIComponent(asked.path![name]!)) + query;
    const headers: Record<string, string> = asked.version === undefined ? {} : { 'if-match': `"${asked.version}"` };
    const answer = asked.file
      ? await caller.upload<unknown>(path, asked.file)
      : asked.form
        ? await caller.send<unknown>(path, asked.form)
        : await caller.ask<unknown>(place.method, path, withMore(asked.body, place.takes), headers);
    const type = answer.headers.get('content-type') ?? '';
    // ASVS 4.1.1: text says in which characters it is written.
    if (/^text\/|[+/]xml/.test(type) && !/charset=utf-8/i.test(type))
      throw new Error(`'${id}' answers '${type}' without a charset.`);
    const contentType = type.split(';')[0]!;
    return { id, status: answer.status, contentType, asked, body: answer.body };
  }

  /** The first call of each operation as an example for the document; long lists are cut to two entries. */
  examples(): Record<string, Example> {
    const sorted = [...this.places.keys()].sort();
    return Object.fromEntries(
      sorted.flatMap((id) => {
        const called = this.calls.find((call) => call.id === id && call.status < 400);
        if (!called) return [];
        const { path, query } = called.asked;
        const body = shortened(called.asked.body);
        const parameters = shortened({ ...path, ...query }) as Record<string, unknown>;
        return [
          [
            id,
            {
              ...(Object.keys(parameters).length > 0 ? { parameters } : {}),
              ...(body === undefined ? {} : { body }),
              ...(called.contentType === 'application/json' && !NO_EXAMPLE.has(id)
                ? { answer: shortened(called.body) }
                : {}),
            },
          ],
        ];
      }),
    );
  }
}

/** A body with all that it has no business to name beside what it has, where such is let by. */
function withMore(body: unknown, takes: ReadonlySet<string> | null): unknown {
  if (takes === null || typeof body !== 'object' || body === null || Array.isArray(body)) return body;
  const more = Object.entries(SET_BY_SERVER).filter(([name]) => !takes.has(name));
  return { ...body, ...Object.fromEntries(more) };
}

/** The document is not an example of itself. */
const NO_EXAMPLE = new Set(['description-describe']);

const ONE_TIME = /^\d{6}$/;
const OWN_PORT = /^127\.0\.0\.1:\d+$/;
const RANDOM_ID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
const RANDOM_NAME = /^[0-9a-f]{32}$/;
const SECOND_FACTOR = /^otpauth:.*/;
const SIGNS = /^whsec_.*/;
const BASE32 = /^[A-Z2-7]{32}$/;
const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d+(Z|\+00:00)$/;
const KNOWN_ON = /(?<=known on )\d+ \w+ \d+ at \d\d:\d\d/;
const PROVIDER = /^http:\/\/127\.0\.0\.1:\d+\/auth\?.*/;

/** The same value with every list cut to its first two entries, and what differs from run to run replaced. */
function shortened(value: unknown): unknown {
  if (typeof value === 'string')
    return value
      .replace(INSTANT, '2026-11-20T10:00:00.000Z')
      .replace(KNOWN_ON, '20 Nov 2026 at 10:00')
      .replace(PROVIDER, 'https://sign-in.example.org/auth?client_id=revright&response_type=code&state=...')
      .replace(ONE_TIME, '123456')
      .replace(OWN_PORT, 'mail.example.org:587')
      .replace(RANDOM_ID, '2c415bf1-dff5-479c-9925-44fbe988f006')
      .replace(RANDOM_NAME, '12aa0b00af350ee2e70093856ac2cd16')
      .replace(SECOND_FACTOR, 'otpauth://totp/Revright:nils?issuer=Revright&secret=JBSWY3DPEHPK3PXPJBSWY3DPEHPK3PXP')
      .replace(BASE32, 'JBSWY3DPEHPK3PXPJBSWY3DPEHPK3PXP')
      .replace(SIGNS, 'whsec_c2hvd24gb25jZSwgYW5kIHNlYWxlZCB3aXRoIHRoZSBrZXk=');
  if (Array.isArray(value)) return value.slice(0, 2).map(shortened);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, SECRET[name] ?? shortened(inner)]));
}

const SECRET: Readonly<Record<string, unknown>> = {
  oldestWorkSeconds: 4.7,
  token: 'rvr_c2hvd24gb25jZSwgYW5kIGtlcHQgYXMgYSBoYXNoIG9ubHk',
  prefix: 'rvr_c2hvd24g',
  codes: ['ABCD-EFGH-JKMN-PQRS-TUVW-XYZ2'],
  query: '?code=...&state=...&iss=...',
  link: '/welcome#Q2hhbmdlcyBldmVyeSB0aW1lLCBzaG93biBvbmNl',
};
