import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import addFormats from 'ajv-formats';
import Ajv2020, { type ValidateFunction } from 'ajv/dist/2020';
import type { OpenApiDocument } from '../../apps/api/src/open-api/document';
import { recordedExamples } from '../../apps/api/src/open-api/examples';
import { repoRoot } from '../../libs/config';
import { withDatabase } from '../../libs/testing';
import { ApiShop } from '../api/api-shop';
import { SmtpShop } from '../mail/smtp-shop';
import { CLIENT, TestProvider } from '../api/provider';
import { everyOperation } from './every-operation';
import { ADDED, Walk } from './walk';
import { WITHOUT_VERSION } from './without-version';

const db = withDatabase();
let shop: ApiShop;
let walk: Walk;
let document: OpenApiDocument;
let checks: Checks;

/** The schemas of the document, as a validator from outside reads them. */
class Checks {
  private readonly ajv = new Ajv2020({ strict: false, allErrors: true });
  private readonly operations = new Map<string, Operation>();
  private readonly methods = new Map<string, string>();

  constructor(document: OpenApiDocument) {
    addFormats(this.ajv);
    this.ajv.addSchema({ $id: 'api', ...document });
    for (const item of Object.values(document.paths)) {
      for (const [method, operation] of Object.entries(item)) {
        this.methods.set(String(operation.operationId), method);
        this.operations.set(String(operation.operationId), operation as unknown as Operation);
      }
    }
  }

  /** In small letters. */
  method(id: string): string | undefined {
    return this.methods.get(id);
  }

  /** What is wrong with a body by the document; null when nothing is. */
  asked(id: string, body: unknown): unknown {
    return this.problems(this.operations.get(id)?.requestBody?.content['application/json']?.schema, body);
  }

  /** What is wrong with an answer of that status by the document; null when nothing is. */
  answered(id: string, status: number, contentType: string, body: unknown): unknown {
    const named = this.operations.get(id)?.responses[status];
    if (!named) return `status ${status} is not in the document`;
    const response = '$ref' in named ? this.resolve(named.$ref) : named;
    if (!response.content) return contentType === '' && status === 204 ? null : `a body of ${contentType} came`;
    const media = response.content[contentType];
    if (!media) return `${contentType} is not in the document`;
    return contentType.includes('json') ? this.problems(media.schema, body) : null;
  }

  private resolve(ref: string): Response {
    const [name] = ref.split('/').slice(-1);
    return (document as unknown as { components: { responses: Record<string, Response> } }).components.responses[
      name!
    ]!;
  }

  private problems(schema: object | undefined, body: unknown): unknown {
    if (!schema) return body === undefined ? null : 'the document has no schema for it';
    const text = JSON.stringify(schema).replace(/"#\/components/g, '"api#/components');
    const validate: ValidateFunction = this.ajv.compile(JSON.parse(text) as object);
    return validate(body) ? null : validate.errors;
  }
}

interface Response {
  readonly content?: Record<string, { schema: object; example?: unknown }>;
}
interface Operation {
  readonly requestBody?: { content: Record<string, { schema: object }> };
  readonly responses: Record<string, Response | { $ref: string }>;
}

beforeAll(async () => {
  const provider = await TestProvider.open();
  const smtp = await SmtpShop.open();
  db.beforeClose(() => {
    provider.close();
    return smtp.close();
  });
  shop = await ApiShop.open(db, {
    OIDC_ISSUER: provider.issuer,
    OIDC_CLIENT_ID: CLIENT.clientId,
    OIDC_CLIENT_SECRET: CLIENT.clientSecret,
    SMTP_URL: smtp.url,
  });
  await provider.sendsBackTo(`${shop.api.url}/from-elsewhere`);
  const administrator = await shop.as('administrator');
  document = (await administrator.get<OpenApiDocument>('/openapi.json')).body;
  checks = new Checks(document);
  walk = new Walk(shop, document);
  await everyOperation(shop, walk);
  if (process.env.WRITE_EXAMPLES) {
    const file = join(repoRoot(), 'apps', 'api', 'src', 'open-api', 'examples.json');
    writeFileSync(file, `${JSON.stringify(walk.examples(), null, 1)}\n`);
  }
}, 300_000);

/** The one operation that never ends, so it is followed elsewhere. */
const ENDLESS = ['live-follow'];

describe('the contract', () => {
  it('is walked whole: every operation is called', () => {
    const called = new Set([...walk.calls.map(({ id }) => id), ...ENDLESS]);
    const left = walk.operations.filter((id) => !called.has(id));
    expect(left.map((id) => `${id}: call it in test/contract/every-operation.ts`)).toEqual([]);
  });

  it('holds for every request that was accepted', () => {
    const wrong = walk.calls.map(({ id, asked }) => ({ id, problem: checks.asked(id, asked.body) }));
    expect(wrong.filter(({ problem }) => problem !== null)).toEqual([]);
    expect(walk.calls.filter(({ status }) => status >= 400)).toEqual([]);
  });

  it('6: keeps nothing of what a body names beyond it: each was sent with role, version, verdict and their like', async () => {
    const { rows: tables } = await db.pool.query<{ name: string }>(
      `SELECT relname AS name FROM pg_class WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace`,
    );
    const kept = await Promise.all(
      tables.map(async ({ name }) => {
        const { rowCount } = await db.pool.query(
          `SELECT FROM "${name}" t WHERE to_jsonb(t)::text LIKE '%' || $1 || '%' OR to_jsonb(t)::text LIKE '%' || $2 || '%'`,
          [ADDED.text, String(ADDED.number)],
        );
        return { name, rows: rowCount };
      }),
    );
    expect(kept.length).toBeGreaterThan(40);
    expect(kept.filter(({ rows }) => rows !== 0)).toEqual([]);
    const told = walk.calls.filter(({ body }) => JSON.stringify(body ?? null).includes(ADDED.text));
    expect(told.map(({ id }) => id)).toEqual([]);
  });

  it('holds for every answer', () => {
    const wrong = walk.calls.map(({ id, status, contentType, body }) => ({
      id,
      problem: checks.answered(id, status, contentType, body),
    }));
    expect(wrong.filter(({ problem }) => problem !== null)).toEqual([]);
  });

  it('holds for the refusals: problem details with a status that the document names', async () => {
    const nothing = 2_000_000_000;
    const asks = [
      walk.ask('tickets-view', { path: { id: nothing } }),
      walk.ask('tickets-view', { path: { id: 1 }, as: shop.anonymous() }),
      walk.ask('tickets-open', { body: { complaint: 7 } }),
      walk.ask('tickets-change-tag', { path: { id: 1 }, body: {} }),
      walk.ask('tickets-change-tag', { path: { id: 1 }, body: {}, version: 900 }),
      walk.ask('tickets-move-stage', { path: { id: 2 }, body: { to: 'repair' }, version: 2 }),
      walk.ask('people-list', { as: 'technician' }),
    ];
    const refused = await Promise.all(asks);
    expect(refused.map(({ status }) => status)).toEqual([404, 401, 400, 428, 412, 409, 403]);
    const wrong = refused.map(({ id, status, contentType, body }) => checks.answered(id, status, contentType, body));
    expect(wrong.filter((problem) => problem !== null)).toEqual([]);
  });

  it('demands of every change the version it was made on, or names why not', () => {
    const changes = walk.operations.filter((id) => checks.method(id) !== 'get');
    const probed = new Set(walk.probes.map(({ id }) => id));
    const neither = changes.filter((id) => !probed.has(id) && !(id in WITHOUT_VERSION));
    expect(neither.map((id) => `${id}: demand If-Match, or name it in test/contract/without-version.ts`)).toEqual([]);
    const both = Object.keys(WITHOUT_VERSION).filter((id) => probed.has(id) || !changes.includes(id));
    expect(both).toEqual([]);
  });

  it('answers a change without a version with 428, and one on another version with 412 and how things stand', () => {
    const wrong = walk.probes.filter(
      ({ without, stale, current }) => without !== 428 || stale !== 412 || current === undefined || current === null,
    );
    expect(wrong.map(({ id, without, stale }) => `${id}: ${without} without, ${stale} stale`)).toEqual([]);
    expect(walk.probes.length).toBeGreaterThan(40);
  });

  it('is shown with an example of every operation that still holds (npm run api-examples records them anew)', () => {
    const examples = process.env.WRITE_EXAMPLES ? walk.examples() : recordedExamples;
    const wrong = walk.operations.flatMap((id) => {
      const call = walk.calls.find((one) => one.id === id && one.status < 400);
      if (!call) return [];
      const example = examples[id];
      if (!example) return [{ id, problem: 'no example' }];
      const answer =
        example.answer === undefined ? null : checks.answered(id, call.status, 'application/json', example.answer);
      return [
        { id, problem: checks.asked(id, example.body) },
        { id, problem: answer },
      ];
    });
    expect(wrong.filter(({ problem }) => problem !== null)).toEqual([]);
  });
});
