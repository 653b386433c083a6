import { startApi } from '../../apps/api/src/start-api';
import { readConfig } from '../../libs/config';
import { loggable } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { ApiShop, Caller, PASSWORD } from '../api/api-shop';

const db = withDatabase();
const lines: string[] = [];
let caller: Caller;

const NAME = 'Zephyrine Marktwo';
const PHONE = '55598127634';
const MARKS = [NAME, 'Zephyrine', PHONE, 'zephyrine@post.example', '9 Marked Lane', PASSWORD];

/** Catches everything that a program writes to its two streams. */
function listen(): () => void {
  const streams = [process.stdout, process.stderr] as const;
  const were = streams.map((stream) => stream.write.bind(stream));
  for (const stream of streams)
    stream.write = (piece: string | Uint8Array) => {
      lines.push(typeof piece === 'string' ? piece : Buffer.from(piece).toString('utf8'));
      return true;
    };
  return () => streams.forEach((stream, at) => (stream.write = were[at]!));
}

let stop: () => void;
beforeAll(async () => {
  const shop = await ApiShop.open(db);
  stop = listen();
  const read = readConfig({ PORT: '0', DATABASE_URL: db.url, LOG_LEVEL: 'trace', REVRIGHT_DEMO: 'false' });
  if (!read.ok) throw new Error(read.problems.join(' '));
  const securityLog = { write: (line: string) => void lines.push(line) };
  const api = await startApi({ config: read.config, store: shop.store, securityLog });
  db.beforeClose(() => api.close());
  const signedIn = await new Caller(api.url, '').ask('POST', '/session', { login: 'counter', password: PASSWORD });
  caller = new Caller(api.url, signedIn.headers.get('set-cookie')!.split(';')[0]!);
}, 300_000);
afterAll(() => stop());

const open = (name: string) =>
  caller.ask('POST', '/tickets', {
    owner: { name, phone: PHONE, email: 'zephyrine@post.example', address: '9 Marked Lane', consent: true },
    unit: { lineCode: 'SNOW-2', modelNumber: 'S2', serial: null, serialAbsent: 'gone', plate: '' },
    complaint: 'Auger does not turn',
  });

describe('what is logged', () => {
  it('names nobody whose unit comes in, whatever is looked for, refused or broken', async () => {
    const looked = encodeURIComponent(NAME);
    expect((await open(NAME)).status).toBe(201);
    for (const path of [`/search?q=${looked}`, `/owners?q=${PHONE}`, `/board?q=${looked}`]) await caller.get(path);
    expect((await caller.get(`/metrics?q=${looked}`)).status).toBe(403);
    expect((await new Caller(`${caller['url']}`, 'revright=made-up').get(`/owners?q=${looked}`)).status).toBe(401);
    expect((await caller.ask('PATCH', '/owners/1', { name: NAME, phone: 7 }, { 'if-match': '"1"' })).status).toBe(400);
    // The database refuses the row, and says so with the whole of it.
    await db.pool.query(`ALTER TABLE owner ADD CONSTRAINT breaks CHECK (name NOT LIKE '%Breaks%')`);
    expect((await open(`${NAME} Breaks`)).status).toBe(500);
    expect((await caller.ask('PATCH', '/owners/1', { name: `${NAME} Breaks` }, { 'if-match': '"1"' })).status).toBe(
      500,
    );
    const told = lines.join('\n');
    expect(told).toContain('POST /api/tickets');
    expect(told).toContain('23514');
    for (const mark of [...MARKS, looked]) expect(told).not.toContain(mark);
  });

  it('says of an error of the database where it happened and which, and of our own what it says', () => {
    const refused = Object.assign(new Error(`Failing row contains (${NAME})`), { code: '23514' });
    expect(loggable(refused)).toMatch(/^Error 23514\n\s+at /);
    expect(loggable(new Error('the queue is full'))).toContain('the queue is full');
  });
});
