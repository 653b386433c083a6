import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { dayOf } from '../../libs/day';
import { openSheet } from '../../libs/sheet-files';
import { SHEET_KINDS, type SheetKind } from '../../libs/sheets';
import { asProgram, openStore, verifyTrail, type OpenStore } from '../../libs/store';
import { folderInRun, withDatabase } from '../../libs/testing';
import { bringSheet, importSheet, lookAtSheet, type Actor, type Ports } from '../../libs/usecases';
import { HOUSE, ROWS } from '../bench/sheets/rows-of-kinds';
import { value } from '../recheck/wait';
import { csvFor } from './sheet-desk';

const db = withDatabase();
const COUNT = 40;
const actor: Actor = { id: 1, name: 'The manager', role: 'manager', locationId: 1 };
const folder = folderInRun('trail-of-imports');
/** The file itself and its columns, which stand there when it is looked at; and what is kept of a ticket in moments that no import has. */
const APART = ['sheet', 'setting', 'ticket_event'];
let store: OpenStore;
let ports: Ports;
let watched: readonly string[];

beforeAll(async () => {
  await db.pool.query(HOUSE);
  store = openStore({ url: db.url, poolSize: 4, sight: 'all' });
  db.beforeClose(() => store.close());
  ports = { store, clock: { now: () => Date.now(), today: () => dayOf(2026, 11, 20) } };
  const { rows } = await db.pool.query<{ name: string }>(
    `SELECT DISTINCT c.relname AS name FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
     WHERE t.tgname LIKE 'audit%' AND c.relname <> ALL ($1) ORDER BY 1`,
    [APART],
  );
  watched = rows.map(({ name }) => name);
}, 300_000);

type Row = Readonly<Record<string, unknown>>;

/** Rows of a kind as the bench writes them, each changed as told. */
const rowsOf = (kind: SheetKind, change: Readonly<Record<string, string>> = {}): string =>
  csvFor(
    kind,
    Array.from({ length: COUNT }, (_, n) => ({ ...ROWS[kind](n), ...change })),
  );

async function looked(kind: SheetKind, csv: string) {
  const path = join(folder, `${kind}.csv`);
  await writeFile(path, csv);
  const brought = await value(
    bringSheet(ports, actor, { kind, fileName: `${kind}.csv`, source: await openSheet(path, path) }),
  );
  const { id, version, mapping } = brought;
  return value(lookAtSheet(ports, actor, { id, version, mapping, dayOrder: null, publish: true }));
}

/** Imports a file; answers how many rows it added and changed. */
const taken = (kind: SheetKind, csv: string) =>
  asProgram(async () => {
    const { id, version, outcome, rejected } = await looked(kind, csv);
    expect(rejected).toEqual([]);
    await value(importSheet(ports, actor, { id, version, leaveOutRejected: false }));
    return { add: outcome!.add, change: outcome!.change };
  });

/** Everything that the trail watches, by table and key. */
async function everything(): Promise<ReadonlyMap<string, Row>> {
  const all = new Map<string, Row>();
  for (const table of watched) {
    const { rows } = await db.pool.query<{ row: Row }>(`SELECT to_jsonb(t) AS row FROM ${table} t`);
    for (const { row } of rows) all.set(`${table} ${String(row['id'] ?? row['key'])}`, row);
  }
  return all;
}

/** What became of the rows, told by comparing them: `insert part 7`, `update part 7`, `delete part 7`. */
function told(before: ReadonlyMap<string, Row>, after: ReadonlyMap<string, Row>): string[] {
  const changes: string[] = [];
  for (const [key, row] of after) {
    const was = before.get(key);
    if (!was) changes.push(`insert ${key}`);
    else if (JSON.stringify(was) !== JSON.stringify(row)) changes.push(`update ${key}`);
  }
  for (const key of before.keys()) if (!after.has(key)) changes.push(`delete ${key}`);
  return changes.toSorted();
}

const withoutAct = (change: string): string => change.slice(change.indexOf(' ') + 1);

interface Kept {
  readonly id: string;
  readonly act: string;
  readonly noun: string;
  readonly key: string;
  readonly batch: { readonly noun: string; readonly act: string; readonly rows: readonly { change: Row }[] } | null;
}

/** What the trail says since a row of it, in the same words; what one row keeps as a batch is told row by row. */
async function trailSince(last: string): Promise<{ changes: string[]; entries: number }> {
  const { rows } = await db.pool.query<Kept>(
    `SELECT e.id::text, e.act, e.noun, e.row_key AS key,
            (SELECT jsonb_build_object('act', b.act, 'noun', b.noun, 'rows', b.rows) FROM audit_batch b
             WHERE b.id = (e.change->>'batch')::bigint) AS batch
     FROM audit_entry e WHERE e.id > $1::bigint AND e.noun <> ALL ($2) ORDER BY e.id`,
    [last, APART],
  );
  const changes = rows.flatMap(({ act, noun, key, batch }) =>
    batch === null
      ? [`${act} ${noun} ${key}`]
      : batch.rows.map(({ change }) => `${batch.act} ${batch.noun} ${String(change['id'])}`),
  );
  const fresh = new Set(changes.filter((change) => change.startsWith('insert ')).map(withoutAct));
  // A paper that comes in and is published at once is new, and that is all a comparison of the rows can tell.
  const whole = changes.filter((change) => !change.startsWith('update ') || !fresh.has(withoutAct(change)));
  return { changes: whole.toSorted(), entries: rows.length };
}

async function headOf(): Promise<string> {
  const { rows } = await db.pool.query<{ id: string }>('SELECT coalesce(max(id), 0)::text AS id FROM audit_entry');
  return rows[0]!.id;
}

/** How many rows of each of these tables there are among the changes. */
const counted = (changes: readonly string[], act: string, tables: readonly string[]) =>
  Object.fromEntries(
    tables.map((table) => [table, changes.filter((change) => change.startsWith(`${act} ${table} `)).length]),
  );

/** Does something, and holds what the trail says of it against what became of the rows. */
async function inTheTrail<T>(work: () => Promise<T>) {
  const [before, last] = [await everything(), await headOf()];
  const answer = await work();
  const { changes, entries } = await trailSince(last);
  expect(changes).toEqual(told(before, await everything()));
  expect((await verifyTrail(db.pool)).fault).toBeNull();
  return { answer, changes, entries };
}

describe('what an import writes stands in the trail', () => {
  it.each<[SheetKind, Readonly<Record<string, number>>]>([
    // What a shop's lines are stands there as a revision of the rulebook.
    ['makers', { rulebook_revision: 1 }],
    ['lines', { rulebook_revision: 1 }],
    ['positions', { rulebook_revision: 1 }],
    ['parts', { part: COUNT }],
    ['supersessions', { supersession: COUNT }],
    ['schemes', { serial_scheme: COUNT }],
    ['rules', { source: 1, fit_rule: COUNT }],
    ['owners', { owner: COUNT / 2, unit: COUNT, evidence: COUNT }],
    ['tickets', { ticket: COUNT / 2, place_record: COUNT }],
  ])('%s: each row that is new once, and the chain holds', async (kind, rows) => {
    const { answer, changes } = await inTheTrail(() => taken(kind, rowsOf(kind)));
    expect(answer).toEqual({ add: COUNT, change: 0 });
    expect(counted(changes, 'insert', Object.keys(rows))).toEqual(rows);
  });

  it.each(['parts', 'owners', 'supersessions', 'schemes', 'rules', 'tickets'] as const)(
    '%s: in fewer rows of the chain than it has rows of its own',
    async (kind) => {
      const next = (n: number) => ROWS[kind](n + 1_000);
      if (kind === 'tickets')
        await taken(
          'owners',
          csvFor(
            'owners',
            Array.from({ length: COUNT }, (_, n) => ROWS.owners(n + 500)),
          ),
        );
      const { changes, entries } = await inTheTrail(() =>
        taken(
          kind,
          csvFor(
            kind,
            Array.from({ length: COUNT }, (_, n) => next(n)),
          ),
        ),
      );
      expect(entries).toBeLessThan(changes.length / 2);
    },
  );

  it.each(SHEET_KINDS)('%s: the same file once more adds nothing to it', async (kind) => {
    const { answer, entries } = await inTheTrail(() =>
      asProgram(async () => {
        const { id, version, outcome } = await looked(kind, rowsOf(kind));
        const again = await importSheet(ports, actor, { id, version, leaveOutRejected: false });
        return { same: outcome!.same, refused: again.ok ? null : again.refusal.code };
      }),
    );
    expect(answer).toEqual({ same: COUNT, refused: 'already-done' });
    expect(entries).toBe(0);
  });

  it.each<[SheetKind, Readonly<Record<string, string>>, Readonly<Record<string, number>>]>([
    ['parts', { price: '13.75' }, { part: COUNT }],
    ['owners', { address: '7 Quay Street' }, { owner: COUNT / 2 }],
  ])('%s: each row that changes once', async (kind, change, rows) => {
    const { answer, changes } = await inTheTrail(() => taken(kind, rowsOf(kind, change)));
    expect(answer.add).toBe(0);
    expect(counted(changes, 'update', Object.keys(rows))).toEqual(rows);
  });

  it('with what it was before', async () => {
    await taken('parts', rowsOf('parts', { price: '15.25' }));
    const { rows } = await db.pool.query<{ prices: string }>(
      `SELECT DISTINCT r->'change'->>'price_minor' AS prices FROM audit_batch b, jsonb_array_elements(b.rows) r
       WHERE b.noun = 'part' AND b.act = 'update' AND b.id = (SELECT max(id) FROM audit_batch)`,
    );
    expect(rows).toEqual([{ prices: '[1375, 1525]' }]);
  });

  it('and nothing of one that broke off', async () => {
    const { entries } = await inTheTrail(async () => {
      const { id, version } = await asProgram(() => looked('parts', rowsOf('parts', { price: '99.00' })));
      await db.pool.query(`ALTER TABLE part ADD CONSTRAINT cheap CHECK (price_minor < 9900 OR number <> '70-0000033')`);
      await expect(
        asProgram(() => importSheet(ports, actor, { id, version, leaveOutRejected: false })),
      ).rejects.toThrow('cheap');
      await db.pool.query('ALTER TABLE part DROP CONSTRAINT cheap');
    });
    expect(entries).toBe(0);
  });
});
