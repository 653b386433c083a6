import Fastify, { type FastifyInstance } from 'fastify';
import { startApi, type RunningApi } from '../../../apps/api/src/start-api';
import { readConfig } from '../../../libs/config';
import { hashPassword } from '../../../libs/store';
import { figure, type BenchLine } from '../bench-line';
import { lineCode, LINES, positionCode, POSITIONS, type BigShop } from './big-shop';
import { load, type LoadAnswer, type LoadRequest } from './http-load';

const PASSWORD = 'a password for the bench';
const SECONDS = 2;
type Route =
  | 'which part'
  | 'which part, by serial'
  | 'which parts of a whole line'
  | 'trivial'
  | 'one query by pg'
  | 'one query by Prisma';
const ROUTES: readonly Route[] = [
  'which part',
  'which part, by serial',
  'which parts of a whole line',
  'trivial',
  'one query by pg',
  'one query by Prisma',
];

/**
 * The route that answers "which part?", with session, permission, schemas and all, beside bare routes in the same
 * process: one that does nothing, and two that ask the database one short question.
 */
export class WhichPart {
  private constructor(
    private readonly api: RunningApi,
    private readonly bare: FastifyInstance,
    private readonly asked: Readonly<Record<Route, LoadRequest>>,
  ) {}

  static async open(shop: BigShop): Promise<WhichPart> {
    const hash = await hashPassword(PASSWORD);
    await shop.pool.query(
      `INSERT INTO person (login, name, role, location_id, password_hash) VALUES ('counter', 'The counter', 'counter', 1, $1)`,
      [hash],
    );
    const read = readConfig({
      PORT: '0',
      DATABASE_URL: shop.url,
      LOG_LEVEL: 'error',
      REVRIGHT_DEMO: 'false',
      REVRIGHT_KEY: 'ab'.repeat(32),
    });
    if (!read.ok) throw new Error(read.problems.join(' '));
    const api = await startApi({ config: read.config, store: shop.store });
    const bare = await bareRoutes(shop);
    const headers = { 'content-type': 'application/json' };
    const login = { method: 'POST', headers, body: JSON.stringify({ login: 'counter', password: PASSWORD }) };
    const cookie = (await fetch(`${api.url}/api/session`, login)).headers.get('set-cookie')!.split(';')[0]!;
    const url = `${api.url}/api/look-up`;
    const lookUp = { url, method: 'POST' as const, headers: { ...headers, cookie }, seconds: SECONDS };
    const get = (path: string): LoadRequest => ({
      url: `${bare.listeningOrigin}${path}`,
      method: 'GET',
      headers: {},
      seconds: SECONDS,
    });
    return new WhichPart(api, bare, {
      // One position of every model there is, over and over; one of units by serial number, of which none is asked about
      // twice for long; and all positions of every model.
      'which part': { ...lookUp, bodies: questions(LINES * 2, onePosition) },
      'which part, by serial': { ...lookUp, bodies: questions(10_000, (n) => ({ ...onePosition(n), ...serial(n) })) },
      'which parts of a whole line': { ...lookUp, bodies: questions(LINES * 2, () => ({})) },
      trivial: get('/trivial'),
      'one query by pg': get('/pg'),
      'one query by Prisma': get('/prisma'),
    });
  }

  async close(): Promise<void> {
    await this.bare.close();
    await this.api.close();
  }

  /** Rates as ratios of medians over rounds in which every route has its turn. */
  async rates(rounds: number): Promise<BenchLine[]> {
    const seen = await this.rounds(rounds);
    const rate = (route: Route) => median(seen.map((round) => round[route].perSecond));
    const ratio = (route: Route) => Math.round((rate('which part') / rate(route)) * 100) / 100;
    return [
      ...ROUTES.map((route) => figure(`${route}: answers`, Math.round(rate(route)), 'a second')),
      figure("'which part' against the trivial route", ratio('trivial'), 'times', { atLeast: 0.7 }),
      figure("'which part' against a route of one query by pg", ratio('one query by pg'), 'times', { atLeast: 2 }),
      figure("'which part' against a route of one query by Prisma", ratio('one query by Prisma'), 'times', {
        atLeast: 4,
      }),
    ];
  }

  /** How much longer the slowest of a hundred answers takes than on the trivial route. */
  async slowest(when: string, rounds: number): Promise<BenchLine> {
    const seen = await this.rounds(rounds);
    const more = seen.map((round) => round['which part'].p99Ms - round.trivial.p99Ms);
    return figure(
      `p99 of 'which part' beyond that of the trivial route, ${when}`,
      Math.round(median(more) * 10) / 10,
      'ms',
      { atMost: 2 },
    );
  }

  private async rounds(count: number): Promise<Record<Route, LoadAnswer>[]> {
    const rounds: Record<Route, LoadAnswer>[] = [];
    // The first to ask about a line wait until it is read; what is measured is a shop at work.
    for (const route of ROUTES) await load(this.asked[route]);
    for (let n = 0; n < count; n++) {
      const round = {} as Record<Route, LoadAnswer>;
      for (const route of ROUTES) {
        round[route] = await load(this.asked[route]);
        if (round[route].refused > 0)
          throw new Error(`${round[route].refused} requests of the route '${route}' were refused`);
      }
      rounds.push(round);
    }
    return rounds;
  }
}

const onePosition = (n: number) => ({ positions: [positionCode(n % POSITIONS)] });
const serial = (n: number) => ({ serial: String(n).padStart(9, '0') });

/** Questions of a walk-in about line after line and its models. */
function questions(count: number, more: (n: number) => object): readonly string[] {
  return Array.from({ length: count }, (_, n) => {
    const model = { lineCode: lineCode(n % LINES), modelNumber: `model-${Math.floor(n / LINES) % 2}` };
    return JSON.stringify({ ...model, ...more(n) });
  });
}

/** Each of the two questions is a look-up of one row by its key. */
async function bareRoutes({ pool, store }: BigShop): Promise<FastifyInstance> {
  const app = Fastify();
  app.get('/trivial', () => ({ ok: true }));
  app.get('/pg', async () => {
    const { rows } = await pool.query({ name: 'one', text: 'SELECT id, name FROM part WHERE id = $1', values: [17] });
    return rows[0] as unknown;
  });
  app.get('/prisma', () => store.settings.read('look-back-months').then((value) => ({ value })));
  await app.listen({ port: 0, host: '127.0.0.1' });
  return app;
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;
