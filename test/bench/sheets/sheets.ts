import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { Pool } from 'pg';
import { SHEET_KINDS, type SheetKind } from '../../../libs/sheets';
import { embeddedProblemSentence, startEmbedded } from '../../../libs/store/embedded';
import { applyMigrations } from '../../../libs/store/migrate';
import { folderInRun, noteProcess } from '../../../libs/testing';
import { figure, type BenchLine } from '../bench-line';
import { bringIn, type BroughtIn } from './bring-in';
import { HOUSE } from './rows-of-kinds';
import { writeCsv, writeXlsx } from './write-files';

const ROWS = 100_000;
const MILLION = 1_000_000;
const MOST_SECONDS = 60;

/** What is tried: `SHEET_KINDS=parts,rules` tries these alone. */
const WANTED = process.env['SHEET_KINDS']?.split(',');
const isWanted = (kind: SheetKind) => WANTED === undefined || WANTED.includes(kind);

/** Spreadsheets of a hundred thousand rows of every kind, as CSV and as a workbook, each into a database of its own. */
export const sheets = {
  name: 'sheets',
  async *run(): AsyncGenerator<BenchLine> {
    const house = await House.open();
    try {
      for (const kind of SHEET_KINDS.filter(isWanted)) {
        const csv = await house.bring(kind, ROWS, 'csv');
        yield* linesOf(`${ROWS} rows of ${kind} as CSV`, csv);
        const workbook = await house.bring(kind, ROWS, 'xlsx');
        yield* linesOf(`${ROWS} rows of ${kind} as a workbook`, workbook);
        yield figure(`${kind}: taking a workbook in : CSV`, ratio(workbook.seconds.taken, csv.seconds.taken), 'x');
      }
      if (isWanted('rules'))
        yield* linesOf(`${ROWS} rows of rules as CSV, published`, await house.bring('rules', ROWS, 'csv', true));
    } finally {
      await house.close();
    }
  },
};

/** A million rows: all of it goes in, and the memory of the process that does it must not grow with them. */
export const millionRows = {
  name: 'million-rows',
  async *run(): AsyncGenerator<BenchLine> {
    const house = await House.open();
    try {
      for (const kind of (['parts', 'owners', 'tickets'] as const).filter(isWanted))
        for (const format of ['csv', 'xlsx'] as const) {
          const some = await house.bring(kind, ROWS, format);
          const many = await house.bring(kind, MILLION, format);
          const name = `${MILLION} rows of ${kind} as ${format === 'csv' ? 'CSV' : 'a workbook'}`;
          yield figure(`${name}: all of it`, tenths(allOf(many)), 's');
          yield figure(`${name}: peak memory`, many.peakMb, 'MB', { atMost: format === 'csv' ? 512 : 1_024 });
          yield figure(`${name}: peak memory : that of ${ROWS}`, ratio(many.peakMb, some.peakMb), 'x');
          yield figure(`${name}: a row : one of ${ROWS}`, ratio(allOf(many) / 10, allOf(some)), 'x', { atMost: 1.5 });
        }
    } finally {
      await house.close();
    }
  },
};

function* linesOf(name: string, { seconds, told, peakMb, ...all }: BroughtIn): Generator<BenchLine> {
  yield figure(`${name}: taken in`, tenths(seconds.taken), 's');
  yield figure(`${name}: looked at`, tenths(seconds.looked), 's');
  yield figure(`${name}: imported`, tenths(seconds.imported), 's');
  yield figure(`${name}: all of it`, tenths(allOf({ seconds })), 's', { atMost: MOST_SECONDS });
  yield figure(`${name}: told how far it is, for each second`, ratio(told, allOf({ seconds })), 'times');
  yield figure(`${name}: peak memory for ${all.added}`, peakMb, 'MB');
}

const allOf = ({ seconds }: Pick<BroughtIn, 'seconds'>) => seconds.taken + seconds.looked + seconds.imported;
const tenths = (seconds: number) => Math.round(seconds * 10) / 10;
const ratio = (a: number, b: number) => Math.round((a / b) * 100) / 100;

/** A crash-safe PostgreSQL that gives every file a database of its own, made from one that holds what it stands on. */
class House {
  private made = 0;
  private readonly ready = new Map<string, Promise<string>>();
  private readonly folder = folderInRun('sheet-files');

  private constructor(
    private readonly server: { readonly url: string; stop(): Promise<void> },
    private readonly pool: Pool,
  ) {}

  static async open(): Promise<House> {
    const result = await startEmbedded({ dataFolder: folderInRun('sheets') });
    if (!result.ok) throw new Error(embeddedProblemSentence(result.problem));
    noteProcess(result.server.pid);
    return new House(result.server, new Pool({ connectionString: result.server.url, max: 1 }));
  }

  /** Brings so many rows of a kind into a shop that has none of it. */
  async bring(kind: SheetKind, rows: number, format: 'csv' | 'xlsx', publish = false): Promise<BroughtIn> {
    const name = await this.copyOf(kind === 'tickets' ? await this.withOwners(rows) : await this.empty());
    const path = join(this.folder, `${kind}.${format}`);
    await (format === 'csv' ? writeCsv : writeXlsx)(path, { kind, rows });
    const brought = await bringIn({ url: this.urlOf(name), kind, path, publish });
    await this.pool.query(`DROP DATABASE ${name}`);
    await rm(path);
    return brought;
  }

  async close(): Promise<void> {
    await this.pool.end();
    await this.server.stop();
  }

  private empty(): Promise<string> {
    return this.once('shop_empty', async (name) => {
      await this.pool.query(`CREATE DATABASE ${name}`);
      await applyMigrations(this.urlOf(name));
      const pool = new Pool({ connectionString: this.urlOf(name), max: 1 });
      await pool.query(HOUSE);
      await pool.end();
    });
  }

  /** Tickets stand on units: two rows for each. */
  private withOwners(rows: number): Promise<string> {
    return this.once(`shop_owners_${rows}`, async (name) => {
      await this.pool.query(`CREATE DATABASE ${name} TEMPLATE ${await this.empty()}`);
      const path = join(this.folder, 'units.csv');
      await writeCsv(path, { kind: 'owners', rows: rows / 2 });
      await bringIn({ url: this.urlOf(name), kind: 'owners', path, publish: false });
      await rm(path);
    });
  }

  private once(name: string, make: (name: string) => Promise<void>): Promise<string> {
    const made = this.ready.get(name) ?? make(name).then(() => name);
    this.ready.set(name, made);
    return made;
  }

  private async copyOf(template: string): Promise<string> {
    const name = `shop_${this.made++}`;
    await this.pool.query(`CREATE DATABASE ${name} TEMPLATE ${template}`);
    return name;
  }

  private urlOf(name: string): string {
    const url = new URL(this.server.url);
    url.pathname = `/${name}`;
    return url.href;
  }
}
