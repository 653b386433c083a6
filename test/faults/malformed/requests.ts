import fc, { type Arbitrary } from 'fast-check';
import type { OpenApiDocument } from '../../../apps/api/src/open-api/document';
import { may, type Permission } from '../../../libs/contracts';
import { disturbed, FromSchema, type Schema } from './from-schema';
import { oddBody, oddText, oddValue, seldom, written } from './odd';
import { ODD_ROLES, type OddRole } from './odd-shop';

/** A request as it goes over the wire. */
export interface OddRequest {
  readonly method: string;
  /** With the query, after `/api`. */
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string | null;
}

/** One route and the requests that are made of it. */
export interface OddRoute {
  readonly id: string;
  /** The first of those who ask that may. */
  readonly as: OddRole;
  readonly requests: Arbitrary<OddRequest>;
}

interface Parameter {
  readonly name: string;
  readonly in: 'path' | 'query' | 'header';
  readonly schema: Schema;
  readonly example?: unknown;
}

interface Described {
  readonly operationId: string;
  readonly description?: string;
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { content: Record<string, { schema: Schema; example?: unknown }> };
}

/** Every route of the API's own document, with requests that it should not take, and some that it does. */
export function oddRoutes(document: OpenApiDocument): readonly OddRoute[] {
  const { schemas } = document['components'] as { schemas: Record<string, Schema> };
  const from = new FromSchema(schemas);
  return Object.entries(document.paths).flatMap(([path, item]) =>
    Object.entries(item).map(([method, described]) => routeOf(from, method, path, described as unknown as Described)),
  );
}

function routeOf(from: FromSchema, method: string, path: string, described: Described): OddRoute {
  const { operationId: id, parameters = [], requestBody } = described;
  const requests = fc
    .tuple(pathOf(path, parameters), queryOf(from, parameters), headers(), bodyOf(from, requestBody?.content ?? {}))
    .map(([at, query, more, { type, text }]) => ({
      method: method.toUpperCase(),
      path: `${at}${query}`,
      headers: { ...(type === null ? {} : { 'content-type': type }), ...more },
      body: method === 'get' ? null : text,
    }));
  return { id, as: whoMay(described), requests };
}

function whoMay({ operationId, description }: Described): OddRole {
  const named = /Needs the permission `([\w-]+)`/.exec(description ?? '')?.[1];
  if (named === undefined) return 'administrator';
  const role = ODD_ROLES.find((one) => may(one, named as Permission));
  if (!role) throw new Error(`nobody here may ${named}, which ${operationId} needs`);
  return role;
}

/** A lone half of a character has no form in an address. */
const inPath = (text: string): string => encodeURIComponent(text.replace(/\p{Surrogate}/gu, '\ufffd'));

/** Ids of things that are there mostly; else what is no id, or no text at all. */
function pathOf(path: string, parameters: readonly Parameter[]): Arbitrary<string> {
  const names = [...path.matchAll(/\{(\w+)\}/g)].map((match) => match[1]!);
  const one = (name: string): Arbitrary<string> => {
    const { example } = parameters.find((parameter) => parameter.name === name) ?? {};
    const known = typeof example === 'string' || typeof example === 'number' ? [String(example)] : [];
    return fc.oneof(
      { weight: 6, arbitrary: fc.integer({ min: 1, max: 8 }).map(String) },
      { weight: 3, arbitrary: fc.constantFrom(...known, '1') },
      {
        weight: 2,
        arbitrary: fc.constantFrom(
          ...['0', '-1', '1.0', '1e3', '2147483647', '2147483648', '99999999999999999999', 'NaN', '__proto__'],
          ...['%00', '%ff', '%', '..%2f..%2fsession', '%ed%a0%80', 'x'.repeat(300), '1;a=b', '%7B%7D'],
        ),
      },
      { weight: 1, arbitrary: oddText.map((text) => inPath(text)) },
    );
  };
  return fc
    .tuple(...names.map(one))
    .map((values) => names.reduce((made, name, i) => made.replace(`{${name}}`, values[i]!), path));
}

function queryOf(from: FromSchema, parameters: readonly Parameter[]): Arbitrary<string> {
  const pairs = parameters
    .filter((parameter) => parameter.in === 'query')
    .map(({ name, schema, example }) =>
      fc
        .option(
          fc.oneof(
            { weight: 3, arbitrary: fc.constant(example ?? '') },
            { weight: 3, arbitrary: from.nearly(schema) },
            { weight: 1, arbitrary: oddValue },
          ),
          { nil: undefined, freq: 5 },
        )
        .map((value) => (value === undefined ? [] : [`${name}=${inQuery(value)}`])),
    );
  const odd = fc.constantFrom(
    'a=b&a=c',
    'q[]=a',
    'q[a]=b',
    '__proto__=1',
    '%',
    'a=%ff',
    '=',
    '&&&',
    'x=%00',
    'after=-1',
  );
  return fc
    .tuple(fc.tuple(...pairs), seldom(odd, 6))
    .map(([known, more]) => [...known.flat(), ...(more === undefined ? [] : [more])].join('&'))
    .map((query) => (query === '' ? '' : `?${query}`));
}

const inQuery = (value: unknown): string => inPath(typeof value === 'string' ? value : (JSON.stringify(value) ?? ''));

/** Versions that may be right, keys, and headers that no browser sends so. */
function headers(): Arbitrary<Record<string, string>> {
  return fc
    .record({
      'if-match': fc.oneof(
        { weight: 8, arbitrary: fc.integer({ min: 1, max: 6 }).map((version) => `"${version}"`) },
        {
          weight: 2,
          arbitrary: fc.constantFrom(undefined, '7', '"0"', '*', 'W/"1"', '"999999999"', '"9999999999"', '""'),
        },
      ),
      'idempotency-key': seldom(fc.constantFrom('k', 'x'.repeat(256), 'a b', '', '\u00e9', 'once'), 8),
      accept: seldom(fc.constantFrom('text/html', '*/*;q=0', 'application/xml', ','), 12),
      'if-none-match': seldom(fc.constantFrom('*', '"1"', 'x'), 20),
      'content-encoding': seldom(fc.constantFrom('gzip', 'identity', 'nonsense'), 40),
      authorization: seldom(fc.constantFrom('Bearer', 'Bearer x', 'Basic Og==', 'Bearer rvr_' + 'x'.repeat(43)), 40),
      cookie: seldom(fc.constantFrom('revright=x', '=;=', 'revright=%00', `a=${'b'.repeat(3_000)}`), 30),
    })
    .map((all) =>
      Object.fromEntries(Object.entries(all).filter((pair): pair is [string, string] => pair[1] !== undefined)),
    );
}

interface Sent {
  readonly type: string | null;
  readonly text: string | null;
}

const JSON_TYPE = 'application/json';
const FORM = 'multipart/form-data';

function bodyOf(from: FromSchema, content: Record<string, { schema: Schema; example?: unknown }>): Arbitrary<Sent> {
  const json = content[JSON_TYPE];
  const asJson = (arbitrary: Arbitrary<unknown>) => arbitrary.map((body) => ({ type: JSON_TYPE, text: written(body) }));
  const odd: Arbitrary<Sent> = fc.record({
    type: fc.oneof(
      { weight: 5, arbitrary: fc.constant(JSON_TYPE) },
      {
        weight: 3,
        arbitrary: fc.constantFrom(
          null,
          ...[
            'text/plain',
            'application/json; charset=utf-16',
            'application/xml',
            FORM,
            `${FORM}; boundary=x`,
            ';',
            'a/b',
          ],
        ),
      },
    ),
    text: oddBody,
  });
  if (json)
    return fc.oneof(
      { weight: 4, arbitrary: asJson(from.nearly(json.schema)) },
      { weight: 4, arbitrary: asJson(disturbed(json.example ?? {})) },
      { weight: 2, arbitrary: odd },
    );
  if (content[FORM]) return fc.oneof({ weight: 3, arbitrary: oddForm() }, { weight: 1, arbitrary: odd });
  return fc.oneof({ weight: 5, arbitrary: fc.constant({ type: null, text: null }) }, { weight: 1, arbitrary: odd });
}

/** A form with parts that are missing, doubled or cut off, and files that are not what they say. */
function oddForm(): Arbitrary<Sent> {
  const part = fc
    .tuple(
      fc.constantFrom('file', 'photo', 'stage', 'kind', '__proto__', ''),
      fc.constantFrom(null, 'a.csv', 'a.xlsx', '../../x.csv', 'photo.jpg', '\u0001', 'x'.repeat(300)),
      fc.oneof(
        fc.constantFrom(
          'PK\u0003\u0004',
          '\u00ff\u00d8\u00ff\u00e0',
          'name,phone\nOle,1\n',
          '"',
          '<svg/>',
          'inspection',
          'owners',
        ),
        oddText,
      ),
    )
    .map(
      ([name, file, text]) =>
        `--x\r\ncontent-disposition: form-data; name="${name}"${file === null ? '' : `; filename="${file}"`}\r\n\r\n${text}\r\n`,
    );
  return fc
    .tuple(fc.array(part, { maxLength: 3 }), fc.constantFrom('--x--\r\n', '--x--\r\n', '', '--x', '\r\n\r\n'))
    .map(([parts, end]) => ({ type: `${FORM}; boundary=x`, text: parts.join('') + end }));
}
