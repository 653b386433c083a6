import { Pool } from 'pg';
import { dayOfInstant } from '../../../libs/day';
import { makeDemoShop } from '../../../libs/demo';
import { openStore, seedShop } from '../../../libs/store';
import { embeddedProblemSentence, startEmbedded, type EmbeddedServer } from '../../../libs/store/embedded';
import { applyMigrations } from '../../../libs/store/migrate';
import { folderInRun, noteProcess } from '../../../libs/testing';

/** Ids of copy k are those of the demo shop plus k times this. */
const STEP = 1_000_000;

/** What a shop has many of, parents first. Only tickets of the past are copied: what is open fits one shop. */
const TABLES: readonly (readonly [table: string, only: string])[] = [
  ['owner', 'TRUE'],
  ['unit', 'TRUE'],
  ['evidence', 'TRUE'],
  ['ticket', 'r.closed_at IS NOT NULL'],
  ['ticket_event', 'EXISTS (SELECT FROM ticket t WHERE t.id = r.ticket_id AND t.closed_at IS NOT NULL)'],
  ['place_record', 'EXISTS (SELECT FROM ticket t WHERE t.id = r.ticket_id AND t.closed_at IS NOT NULL)'],
  ['install', 'EXISTS (SELECT FROM ticket t WHERE t.id = r.ticket_id AND t.closed_at IS NOT NULL)'],
  ['pick', 'EXISTS (SELECT FROM ticket t WHERE t.id = r.ticket_id AND t.closed_at IS NOT NULL)'],
];

/** Columns that name a row of a copied table. */
const COPIED_IDS = new Set(['id', 'owner_id', 'unit_id', 'ticket_id', 'record_id']);

/** What must not be the same twice, or would make every copy answer the same search; `k` is the number of the copy. */
const TOLD_APART: Readonly<Record<string, string>> = {
  'owner.name': `r.name || ' ' || chr(65 + k / 26) || chr(97 + k % 26)`,
  'owner.phone': `r.phone || lpad(k::text, 3, '0')`,
  'unit.serial': `r.serial || '-' || k`,
  'unit.serial_search': `r.serial_search || k`,
  'ticket.number': `r.number || '-' || k`,
};

/**
 * The demo shop on a crash-safe PostgreSQL of its own, with its past copied over and over until it holds at least
 * `tickets` tickets; the owners, serials and numbers of each copy are its own.
 */
export class CopiedShop {
  private constructor(
    private readonly server: EmbeddedServer,
    readonly pool: Pool,
  ) {}

  get url(): string {
    return this.server.url;
  }

  static async open(tickets: number): Promise<CopiedShop> {
    const result = await startEmbedded({ dataFolder: folderInRun('bench') });
    if (!result.ok) throw new Error(embeddedProblemSentence(result.problem));
    noteProcess(result.server.pid);
    const { url } = result.server;
    await applyMigrations(url);
    const store = openStore({ url });
    await seedShop(store, makeDemoShop(1, dayOfInstant(new Date(), 'UTC')));
    await store.close();
    const shop = new CopiedShop(result.server, new Pool({ connectionString: url, max: 2 }));
    await shop.copyPast(tickets);
    return shop;
  }

  async close(): Promise<void> {
    await this.pool.end();
    await this.server.stop();
  }

  private async copyPast(tickets: number): Promise<void> {
    const client = await this.pool.connect();
    try {
      const { rows } = await client.query<{ count: string }>('SELECT count(*) FROM ticket WHERE closed_at IS NOT NULL');
      const copies = Math.ceil(tickets / Number(rows[0]!.count)) - 1;
      // Triggers check and note what people do; nobody does this.
      await client.query(`SET session_replication_role = replica`);
      for (const [table, only] of TABLES) {
        const columns = await this.columnsOf(table);
        const values = columns.map((column) => valueOf(table, column)).join(', ');
        await client.query(
          `INSERT INTO ${table} (${columns.join(', ')})
             SELECT ${values} FROM ${table} r, generate_series(1, ${copies}) k WHERE ${only}`,
        );
      }
      await client.query(`RESET session_replication_role`);
      await client.query('VACUUM ANALYZE');
    } finally {
      client.release();
    }
  }

  private async columnsOf(table: string): Promise<readonly string[]> {
    const { rows } = await this.pool.query<{ name: string }>(
      `SELECT column_name AS name FROM information_schema.columns
       WHERE table_name = $1 AND table_schema = 'public' AND is_generated = 'NEVER' ORDER BY ordinal_position`,
      [table],
    );
    return rows.map(({ name }) => name);
  }
}

function valueOf(table: string, column: string): string {
  const own = TOLD_APART[`${table}.${column}`];
  if (own !== undefined) return own;
  return COPIED_IDS.has(column) ? `r.${column} + k * ${STEP}` : `r.${column}`;
}
