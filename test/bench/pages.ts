import type { Pool } from 'pg';
import { figure, type BenchLine } from './bench-line';
import { ApiProcess } from './pages/api-process';
import { CopiedShop } from './pages/copied-shop';
import { measure, p95, type Latencies } from './pages/load';

const TICKETS = Number(process.env['REVRIGHT_BENCH_TICKETS'] ?? 100_000);
const REQUESTS = 400;
const ROUNDS = 5;
/** Published with the demo; see the README. */
const PASSWORD = 'oil-and-rags';
/** Every signed-in request pays for its session; this route does little else. */
const TRIVIAL = '/session';
/** Tables that grow with the tickets: none of them may be read from end to end for a page. */
const GROWING = ['owner', 'unit', 'evidence', 'ticket', 'ticket_event', 'place_record', 'install', 'pick'];

/** The board, the search and a ticket with many tickets in the database, against a route that does next to nothing. */
export const benches = {
  name: 'pages',
  async run(): Promise<BenchLine[]> {
    const shop = await CopiedShop.open(TICKETS);
    const api = await ApiProcess.start(shop.url);
    try {
      const cookie = await api.signIn('bram', PASSWORD);
      const pages = await pathsOf(shop.pool);
      const ask = (paths: readonly string[]) => measure(api.url, cookie, paths, REQUESTS);
      for (const paths of Object.values(pages)) await ask(paths);
      const before = await wholeReads(shop.pool);
      const lines = (await inRounds(pages, ask)).flat();
      const after = await wholeReads(shop.pool);
      const whole = GROWING.filter((table) => after.get(table)! > before.get(table)!);
      if (whole.length > 0) process.stderr.write(`Read from end to end: ${whole.join(', ')}.\n`);
      return [...lines, figure('growing tables read from end to end', whole.length, 'tables', { atMost: 0 })];
    } finally {
      await api.stop();
      await shop.close();
    }
  },
};

type Pages = Readonly<Record<string, readonly string[]>>;

/** Every page and the trivial route turn and turn about, so that a busy machine slows all of them alike. */
async function inRounds(pages: Pages, ask: (paths: readonly string[]) => Promise<Latencies>): Promise<BenchLine[][]> {
  const taken = Object.keys(pages).map((name) => ({ name, times: [] as number[], ratios: [] as number[] }));
  for (let round = 0; round < ROUNDS; round++) {
    const trivial = p95(await ask([TRIVIAL]));
    for (const { name, times, ratios } of taken) {
      const time = p95(await ask(pages[name]!));
      times.push(time);
      ratios.push(time / trivial);
    }
  }
  return taken.map(({ name, times, ratios }) => [
    figure(`${name} at ${TICKETS} tickets, p95`, tenths(median(times)), 'ms', { atMost: 100 }),
    figure(`${name} against the trivial route, p95`, tenths(median(ratios)), 'x', { atMost: 5 }),
  ]);
}

/** What a shop asks for: its board, searches of every kind, tickets old and new. */
async function pathsOf(pool: Pool): Promise<Pages> {
  const { rows } = await pool.query<{ id: number; number: string; serial: string; owner: string; phone: string }>(
    `SELECT t.id, t.number, u.serial_search AS serial, split_part(o.name, ' ', 2) AS owner, right(o.phone, 6) AS phone
     FROM ticket t JOIN unit u ON u.id = t.unit_id JOIN owner o ON o.id = t.owner_id
     JOIN person p ON p.location_id = t.location_id AND p.login = 'bram'
     WHERE u.serial_search IS NOT NULL AND o.phone <> '' AND t.id % 997 < 20 ORDER BY t.id % 997, t.id LIMIT 100`,
  );
  const parts = await pool.query<{ number: string }>('SELECT number FROM part ORDER BY id LIMIT 20');
  const searches = [
    ...rows.flatMap(({ number, serial, owner, phone }) => [number, serial, serial.slice(1, 7), owner, phone]),
    ...parts.rows.map(({ number }) => number),
  ];
  return {
    'the board': ['/board'],
    'the search': searches.map((q) => `/search?q=${encodeURIComponent(q)}`),
    'a ticket': rows.map(({ id }) => `/tickets/${id}`),
  };
}

/** How often each table was read from end to end so far, once what the server counts has settled. */
async function wholeReads(pool: Pool): Promise<ReadonlyMap<string, number>> {
  await new Promise((resolve) => setTimeout(resolve, 1_500));
  const { rows } = await pool.query<{ relname: string; seq_scan: string }>(
    'SELECT relname, seq_scan FROM pg_stat_user_tables WHERE relname = ANY($1)',
    [GROWING],
  );
  return new Map(rows.map(({ relname, seq_scan }) => [relname, Number(seq_scan)]));
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

const tenths = (value: number): number => Math.round(value * 10) / 10;
