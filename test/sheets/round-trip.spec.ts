import { startApi } from '../../apps/api/src/start-api';
import { readConfig } from '../../libs/config';
import type { RulebookImported } from '../../libs/contracts';
import { demoRulebookFile, makeDemoShop } from '../../libs/demo';
import { openStore, seedShop } from '../../libs/store';
import { SHEET_KINDS, type SheetKind } from '../../libs/sheets';
import { withDatabase, type SpecDatabase } from '../../libs/testing';
import { day } from '../../libs/day';
import { Caller } from '../api/api-shop';
import { said, SheetDesk } from './sheet-desk';

const db = withDatabase();
const empty = withDatabase();
const other = withDatabase();
const demo = makeDemoShop(1, day('2026-11-20'));
let full: SheetDesk;
let bare: SheetDesk;
let another: SheetDesk;

/** A running API on the database, and its manager's desk. */
async function deskOn(on: SpecDatabase, seed: boolean): Promise<SheetDesk> {
  const store = openStore({ url: on.url });
  await seedShop(store, seed ? demo : NOTHING);
  const read = readConfig({ DATABASE_URL: on.url, PORT: '0', TIME_ZONE: 'UTC', LOG_LEVEL: 'error', NODE_ENV: 'test' });
  if (!read.ok) throw new Error(read.problems.join(' '));
  const api = await startApi({ config: read.config, store });
  on.beforeClose(async () => {
    await api.close();
    await store.close();
  });
  const { login, password } = demo.people.find(({ role }) => role === 'manager')!;
  const signedIn = await new Caller(api.url, '').ask('POST', '/session', { login, password });
  return new SheetDesk(api.url, new Caller(api.url, signedIn.headers.get('set-cookie')!.split(';')[0]!));
}

/** A house with people and nothing else. */
const KEPT = ['locations', 'benches', 'people'];
const NOTHING = Object.fromEntries(
  Object.entries(demo).map(([name, value]) => [name, Array.isArray(value) && !KEPT.includes(name) ? [] : value]),
) as unknown as typeof demo;

beforeAll(async () => {
  full = await deskOn(db, true);
  bare = await deskOn(empty, false);
  another = await deskOn(other, false);
}, 300_000);

const outcome = async (desk: SheetDesk, kind: SheetKind, format: 'csv' | 'xlsx') => {
  const looked = await desk.look(kind, await desk.export(kind, format), { name: `${kind}.${format}` });
  return { ...looked.outcome!, said: said(looked).slice(0, 5), rows: looked.rows };
};

describe('what the demo shop takes out', () => {
  it.each(SHEET_KINDS)(
    'changes nothing when it is brought in again as CSV: %s',
    async (kind) => {
      const { add, change, rejected, same, rows, said: problems } = await outcome(full, kind, 'csv');
      expect({ add, change, rejected, problems }).toEqual({ add: 0, change: 0, rejected: 0, problems: [] });
      expect(same).toBe(rows);
      expect(rows).toBeGreaterThan(2);
    },
    120_000,
  );

  it('holds a bar that ends the warranty, without which the round trip would not be tried with one', async () => {
    expect((await full.export('rules')).toString()).toContain('(breaks-later, voids warranty: ');
  });

  it.each(SHEET_KINDS)(
    'changes nothing when it is brought in again as a workbook: %s',
    async (kind) => {
      const { add, change, rejected, said: problems } = await outcome(full, kind, 'xlsx');
      expect({ add, change, rejected, problems }).toEqual({ add: 0, change: 0, rejected: 0, problems: [] });
    },
    120_000,
  );

  it('fills an empty shop sheet by sheet, which then takes out the same', async () => {
    for (const kind of ['makers', 'lines', 'positions', 'parts', 'supersessions', 'schemes'] as const) {
      await bare.take(kind, await full.export(kind));
      const lines = async (desk: SheetDesk) => (await desk.export(kind)).toString().split('\r\n').sort();
      expect([kind, await lines(bare)]).toEqual([kind, await lines(full)]);
    }
  }, 120_000);
});

describe('the rulebook file', () => {
  it('holds what the demo is made from, and nothing changes when it comes back', async () => {
    const text = (await full.download('/rulebook-file')).toString();
    const file = JSON.parse(text) as Record<string, unknown[]>;
    const made = JSON.parse(JSON.stringify(demoRulebookFile(demo))) as Record<string, unknown[]>;
    for (const { models } of made['lines'] as { models: { number: string }[] }[])
      models.sort((a, b) => (a.number < b.number ? -1 : 1));
    const without = ({ standardEditions: _published, ...rest }: Record<string, unknown>) => sortedLists(rest);
    expect(without(file)).toEqual(without(made));
    const again = await full.send<RulebookImported>('/rulebook-file', text, 'rulebook.json');
    expect(again.status).toBe(200);
    const demoAgain = await full.send<RulebookImported>(
      '/rulebook-file?dryRun=true',
      JSON.stringify(demoRulebookFile(demo)),
      'demo.json',
    );
    expect(demoAgain.body.counts.lines).toEqual({ added: 0, changed: 0, same: demo.lines.length });
    const counts = Object.values(again.body.counts);
    expect(counts.map(({ added, changed }) => added + changed)).toEqual(counts.map(() => 0));
  }, 120_000);

  it('goes through an empty shop without loss', async () => {
    const text = (await full.download('/rulebook-file')).toString();
    const taken = await another.send<RulebookImported>('/rulebook-file', text, 'rulebook.json');
    expect([taken.status, taken.body.counts.rules.added]).toEqual([200, demo.rules.length]);
    const parse = (json: Buffer | string) => sortedLists(JSON.parse(json.toString()) as Record<string, unknown>);
    expect(parse(await another.download('/rulebook-file'))).toEqual(parse(text));
  }, 120_000);

  it('is refused where it says otherwise about what is on record, and when it is none', async () => {
    const file = JSON.parse((await full.download('/rulebook-file')).toString()) as {
      rules: { key: string; action: string }[];
    };
    file.rules[0]!.action = file.rules[0]!.action === 'nothing' ? 'call-back' : 'nothing';
    const other = await full.send<{ detail: string }>('/rulebook-file', JSON.stringify(file), 'rulebook.json');
    expect([other.status, other.body.detail]).toEqual([
      409,
      expect.stringContaining(`Rule ${file.rules[0]!.key} version`) as string,
    ]);
    expect((await full.send('/rulebook-file', 'no json', 'rulebook.json')).status).toBe(400);
    expect((await full.send('/rulebook-file', '{"format":"other"}', 'rulebook.json')).status).toBe(400);
  }, 60_000);
});

function flat(value: unknown, into: Record<string, true> = {}): Record<string, true> {
  if (Array.isArray(value)) for (const one of value) flat(one, into);
  else if (typeof value === 'object' && value !== null)
    for (const [key, one] of Object.entries(value)) {
      into[key] = true;
      flat(one, into);
    }
  return into;
}

/** Lists in an order of their own: the file's order of entries says nothing. */
function sortedLists(file: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(file).map(([name, list]) => [
      name,
      Array.isArray(list) ? list.map((one) => JSON.stringify(one, Object.keys(flat(one)).sort())).sort() : list,
    ]),
  );
}
