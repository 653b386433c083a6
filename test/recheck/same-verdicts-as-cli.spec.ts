import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startWorker } from '../../apps/worker/src/start-worker';
import { repoRoot } from '../../libs/config';
import { RULEBOOK_FORMAT, type RulebookDocumentInput } from '../../libs/contracts';
import { formatDay } from '../../libs/day';
import { writeRulebook, writeUnitFacts, type PartQuestion, type Rulebook } from '../../libs/fit-rules';
import { Draw, parts, stream, world } from '../../libs/fit-rules/testing/random-book';
import { withDatabase } from '../../libs/testing';
import { exportRulebookFile, importRulebookFile, orderRecheck } from '../../libs/usecases';
import { manager, SmallShop } from './small-shop';
import { finished, value } from './wait';

/** Set REVRIGHT_SAME_BOOKS to compare more; book n is drawn from seed n, so any difference can be met again. */
const BOOKS = Number(process.env.REVRIGHT_SAME_BOOKS ?? 12);
const INSTALLS = 40;
/** The days of a drawn book run from 0 to 24. */
const TODAY = 12;

const db = withDatabase();
let shop: SmallShop;
const folder = mkdtempSync(join(tmpdir(), 'revright-same-verdicts-'));
afterAll(() => rmSync(folder, { recursive: true }));

beforeAll(async () => {
  shop = await SmallShop.open(db.url, db.pool);
  shop.clock.moveTo(TODAY);
  // The small shop numbers its own rows; what is brought in comes after them.
  for (const table of ['maker', 'product_line', 'model', 'position', 'part', 'owner'])
    await db.pool.query(`SELECT setval(pg_get_serial_sequence($1, 'id'), 1000)`, [table]);
  const worker = await startWorker({
    config: { redisUrl: undefined, workerConcurrency: 2, timeZone: 'UTC' },
    store: shop.store,
    clock: shop.clock,
    onError: (error) => {
      throw error;
    },
    sweepEveryMs: 500,
  });
  db.beforeClose(async () => {
    await worker.close();
    await shop.store.close();
  });
});

/** The names of one book's world, of which no other book of the same file knows anything. */
function named<T>(book: number, what: T): T {
  const name = (text: string): string => {
    if (/^(?:[ls]\d|r\d+|source \d)$/.test(text)) return `${text}-${book}`;
    return text.startsWith('M/') ? `M${book}/${text.slice(2).replace(/-/g, '').toUpperCase()}` : text;
  };
  const walk = (one: unknown): unknown => {
    if (typeof one === 'string') return name(one);
    if (Array.isArray(one)) return one.map(walk);
    if (typeof one !== 'object' || one === null) return one;
    return Object.fromEntries(Object.entries(one).map(([key, inner]) => [key, walk(inner)]));
  };
  return walk(what) as T;
}

/** A rulebook file with the catalogue its rules speak of, as the server takes it in and the command line reads it. */
function documentOf(book: number, drawn: Rulebook): RulebookDocumentInput {
  const known = new Set<string>();
  const { supersessions, ...written } = writeRulebook({
    ...drawn,
    sources: drawn.sources.map((source) => ({ ...source, title: 'a paper' })),
  });
  const position = (code: string) => ({ code, name: `Position ${code}`, assembly: 'Shaft', places: ['left'] });
  const line = (code: string) => ({
    code,
    maker: `M${book}`,
    name: `Line ${code}`,
    producedFrom: '1970-01-01',
    models: world.models.map((number) => ({ number })),
    options: world.options.map((option) => ({ code: option, name: option })),
    positions: ['p1', 'p2'].map(position),
  });
  const numberRules = { noise: '-', packMarks: [], trailingLetterIsRevision: false };
  return named(book, {
    format: RULEBOOK_FORMAT,
    version: 1,
    makers: [{ code: `M${book}`, name: `Maker ${book}`, numberRules }],
    lines: ['l1', 'l2'].map(line),
    parts: [...parts, 'M/unheard-of'].map((key) => ({ key, number: key.slice(2), name: key })),
    ...written,
    // The shop keeps one row for what gives way to what from when on.
    supersessions: supersessions.filter(({ from, to, known: { from: since } }) => {
      const key = `${from} ${to} ${since}`;
      return !known.has(key) && known.add(key);
    }),
  });
}

/** Puts each install into a unit of its own on an open ticket; answers the units' ids, in order. */
async function install(book: number, questions: readonly PartQuestion[]): Promise<readonly number[]> {
  const ids: number[] = [];
  for (const question of questions) {
    const { unit, position, parts: told, fittedOn } = named(book, question);
    const built = `{${unit.built.map(({ from, to }) => `[${from},${to})`).join(',')}}`;
    const [from, to] = [unit.built[0]?.from ?? 0, unit.built.at(-1)?.to ?? 0];
    const { rows } = await db.pool.query<{ id: number }>(
      `INSERT INTO unit (owner_id, line_id, model_id, serial_scheme, serial_key, options, built, built_from, built_to)
       SELECT 1, l.id, (SELECT id FROM model WHERE line_id = l.id AND number = $2), $3, $4, $5, $6, $7, $8
       FROM product_line l WHERE l.code = $1 RETURNING id`,
      [
        unit.line,
        unit.model,
        unit.serial?.scheme ?? null,
        unit.serial?.key ?? null,
        JSON.stringify(unit.options),
        built,
        from,
        to,
      ],
    );
    const id = rows[0]!.id;
    const ticket = await shop.ticket(id, null);
    await db.pool.query(
      `INSERT INTO install (unit_id, position_id, place, record_id, ticket_id, line_id, part_id, candidates, fitted_on,
                            built_from, built_to)
       SELECT $1, p.id, 1, 0, $2, p.line_id,
              CASE WHEN cardinality($4::text[]) = 1 THEN (SELECT id FROM part WHERE key = $4[1]) END,
              CASE WHEN cardinality($4::text[]) = 1 THEN '{}' ELSE (SELECT array_agg(id) FROM part WHERE key = ANY ($4)) END,
              $5, $6, $7
       FROM position p WHERE p.code = $3 AND p.line_id = (SELECT line_id FROM unit WHERE id = $1)`,
      [id, ticket, position, told, fittedOn, from, to],
    );
    ids.push(id);
  }
  return ids;
}

/** An install as a line of the table that the command line reads. */
function rowOf(book: number, { unit, position, parts: told, fittedOn }: PartQuestion): string {
  const fitted = fittedOn === null ? null : formatDay(fittedOn);
  return JSON.stringify(named(book, { facts: writeUnitFacts(unit), position, parts: told, fittedOn: fitted }));
}

/** One file of several: none of their names is another's. */
function together(files: readonly RulebookDocumentInput[]): RulebookDocumentInput {
  const all = <K extends 'makers' | 'lines' | 'parts' | 'sources' | 'rules' | 'supersessions'>(list: K) =>
    files.flatMap((file) => (file[list] ?? []) as NonNullable<RulebookDocumentInput[K]>[number][]);
  return {
    ...files[0]!,
    ...{ makers: all('makers'), lines: all('lines'), parts: all('parts') },
    ...{ sources: all('sources'), rules: all('rules'), supersessions: all('supersessions') },
  };
}

/** What the built program says of these installs by a rulebook file. */
function byFiles(file: object, installs: readonly string[]): readonly string[] {
  const path = join(folder, 'rulebook.json');
  writeFileSync(path, JSON.stringify(file));
  const program = join(repoRoot(), 'dist/apps/cli/src/main.js');
  const clock = ['--in-force-on', formatDay(TODAY), '--known-at', new Date().toISOString()];
  const args = [program, 'judge', path, '-', '--format', 'json', '--reasons', 'none', '--quiet', ...clock];
  const out = execFileSync(process.execPath, args, { input: installs.join('\n'), maxBuffer: 1 << 28 }).toString();
  return out
    .split('\n')
    .filter(Boolean)
    .map((line) => (JSON.parse(line) as { verdict: string }).verdict);
}

describe('the server and the command line', () => {
  it(`give the same verdicts for ${BOOKS} random rulebooks and their installs: the one by import and recheck, the other by files alone, also by the file that the server gives out again`, async () => {
    const books = Array.from({ length: BOOKS }, (_, i) => {
      const draw = new Draw(stream(i + 1));
      const file = documentOf(i + 1, draw.rulebook());
      const questions = Array.from({ length: INSTALLS }, () => draw.question());
      return { book: i + 1, file, questions: questions.filter(({ parts: told }) => told.length > 0) };
    });
    const file = together(books.map((one) => one.file));
    const { recheckId } = await value(importRulebookFile(shop.ports, manager, { file, dryRun: false }));
    await finished(shop.store, recheckId!);
    const units: number[] = [];
    for (const { book, questions } of books) units.push(...(await install(book, questions)));
    const ordered = await value(orderRecheck(shop.ports, manager));
    await finished(shop.store, ordered.recheckId);
    const { rows } = await db.pool.query<{ verdict: string }>(
      'SELECT verdict FROM install WHERE unit_id = ANY ($1) ORDER BY unit_id',
      [units],
    );

    const installs = books.flatMap(({ book, questions }) => questions.map((question) => rowOf(book, question)));
    const beside = (verdicts: readonly string[]) => installs.map((row, i) => `${verdicts[i]}: ${row}`);
    const byServer = beside(rows.map(({ verdict }) => verdict));
    expect(byServer).toEqual(beside(byFiles(file, installs)));
    expect(byServer).toEqual(beside(byFiles(await exportRulebookFile(shop.ports), installs)));
    expect(new Set(rows.map(({ verdict }) => verdict)).size).toBe(6);
  }, 120_000);
});
