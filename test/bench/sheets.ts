import type { Day } from '../../libs/day';
import { dayOf } from '../../libs/day';
import { asProgram, openStore, type OpenStore } from '../../libs/store';
import { embeddedProblemSentence, startEmbedded } from '../../libs/store/embedded';
import { applyMigrations } from '../../libs/store/migrate';
import { kindOf, proposeMapping, type SheetKind } from '../../libs/sheets';
import { folderInRun, noteProcess } from '../../libs/testing';
import {
  bringSheet,
  importSheet,
  lookAtSheet,
  type Actor,
  type Outcome,
  type Ports,
  type SheetSource,
} from '../../libs/usecases';
import { figure, type BenchLine } from './bench-line';

const ROWS = Number(process.env['SHEET_ROWS'] ?? 100_000);
const TODAY: Day = dayOf(2026, 11, 20);
const AT_ONCE = 2_000;

/**
 * Spreadsheets of a hundred thousand rows: taken in, looked at and imported, by the use cases on a
 * crash-safe PostgreSQL of its own. `SHEET_ROWS=1000000` tries a million.
 */
export const benches = { name: 'sheets', run };

async function run(): Promise<BenchLine[]> {
  const result = await startEmbedded({ dataFolder: folderInRun('sheets') });
  if (!result.ok) throw new Error(embeddedProblemSentence(result.problem));
  noteProcess(result.server.pid);
  const { url } = result.server;
  await applyMigrations(url);
  const store = openStore({ url, sight: 'all' });
  try {
    await store.pool.query(HOUSE);
    return await asProgram(async () => {
      const lines: BenchLine[] = [];
      for (const kind of ['parts', 'owners', 'tickets'] as const) lines.push(...(await bench(store, kind)));
      return lines;
    });
  } finally {
    await store.close();
    await result.server.stop();
  }
}

const HOUSE = `
  INSERT INTO location (id, code, name) VALUES (1, 'MAIN', 'Main shop');
  INSERT INTO person (id, login, name, role, location_id) VALUES (1, 'manager', 'The manager', 'manager', 1);
  INSERT INTO maker (id, code, name, number_rules) VALUES (1, 'HOLM', 'Holmgard',
    '{"makerCode":"HOLM","noise":"-","packMarks":[],"trailingLetterIsRevision":true}');
  INSERT INTO product_line (id, code, maker_id, name, kind, produced_from) VALUES (1, 'SNOW', 1, 'Snow', 'snow thrower', '2010-01-01');
  INSERT INTO position (line_id, code, name, assembly, places, place_names, sort_order) VALUES (1, 'PIN', 'Pin', 'Auger', 2, '{left,right}', 1);
  INSERT INTO serial_scheme (maker_id, code, scheme) VALUES (1, 'HOLM-A', '{"id":"HOLM-A","maker":"HOLM","lines":[],
    "name":"dated","validFrom":null,"validTo":null,"source":"made for the bench","fields":[{"kind":"year-two-digits"},
    {"kind":"month-number"},{"kind":"sequence","length":6}]}');`;

const actor: Actor = { id: 1, name: 'The manager', role: 'manager', locationId: 1 };
const number = (n: number) => String(n).padStart(6, '0');
const serial = (n: number) => `${12 + (n % 12)}${String(1 + (n % 11)).padStart(2, '0')}${number(n)}`;

/** Row `n` of each kind, by field. */
const ROW: Readonly<Record<'parts' | 'owners' | 'tickets', (n: number) => Record<string, string>>> = {
  parts: (n) => ({ maker: 'HOLM', number: `70-${number(n)}`, name: `Part ${n}`, price: '12.50' }),
  owners: (n) => ({
    ...{
      name: `Owner ${n >> 1}`,
      phone: `0555 ${number(n >> 1)}`,
      address: `${n >> 1} Mill Lane`,
      consent: 'yes',
    },
    ...{ line: 'SNOW', serial: serial(n), firstSeen: '2025-03-01' },
  }),
  tickets: (n) => ({
    ...{ number: `OLD-${n >> 1}`, opened: '2026-05-02', closed: '2026-05-04', line: 'SNOW', serial: serial(n >> 1) },
    ...{ position: 'PIN', place: String(1 + (n & 1)), part: `70-${number(n)}`, side: 'left' },
  }),
};

async function bench(store: OpenStore, kind: 'parts' | 'owners' | 'tickets'): Promise<BenchLine[]> {
  const ports: Ports = { store, clock: { now: () => Date.now(), today: () => TODAY } };
  const begun = performance.now();
  const brought = await value(bringSheet(ports, actor, { kind, fileName: `${kind}.csv`, source: sourceOf(kind) }));
  const taken = performance.now();
  const choice = { mapping: brought.mapping, dayOrder: null, publish: false };
  const looked = await value(lookAtSheet(ports, actor, { ...choice, id: brought.id, version: brought.version }));
  const seen = performance.now();
  if (looked.outcome?.add !== ROWS) throw new Error(`${kind}: ${JSON.stringify([looked.outcome, looked.rejected[0]])}`);
  const on = { id: looked.id, version: looked.version };
  await value(importSheet(ports, actor, { ...on, leaveOutRejected: false }));
  const done = performance.now();
  const seconds = (from: number, to: number) => Math.round((to - from) / 100) / 10;
  return [
    figure(`${ROWS} rows of ${kind}: taken in`, seconds(begun, taken), 's'),
    figure(`${ROWS} rows of ${kind}: looked at`, seconds(taken, seen), 's'),
    figure(`${ROWS} rows of ${kind}: imported`, seconds(seen, done), 's'),
    figure(`${ROWS} rows of ${kind}: all of it`, seconds(begun, done), 's', ROWS <= 100_000 ? { atMost: 60 } : {}),
    figure(`memory after ${kind}`, Math.round(process.memoryUsage().rss / 1_048_576), 'MB'),
  ];
}

function sourceOf(id: SheetKind & keyof typeof ROW): SheetSource {
  const fields = Object.keys(ROW[id](0));
  const headings = fields.map((field) => kindOf(id).columns[field]!.heading);
  if (fields.some((field) => (proposeMapping(kindOf(id), headings)[field] ?? null) === null)) throw new Error(id);
  // eslint-disable-next-line @typescript-eslint/require-await -- made up on the way, read as a file's rows are
  async function* rows() {
    for (let from = 0; from < ROWS; from += AT_ONCE)
      yield Array.from({ length: Math.min(AT_ONCE, ROWS - from) }, (_, at) => {
        const row = ROW[id](from + at);
        return { n: from + at + 2, cells: fields.map((field) => row[field]!) };
      });
  }
  return { format: 'csv', encoding: 'utf-8', encodingCertain: true, delimiter: ',', headings, rows: rows() };
}

async function value<T>(asked: Promise<Outcome<T>>): Promise<T> {
  const outcome = await asked;
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.refusal.detail);
}
