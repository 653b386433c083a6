import type { ClientBase } from 'pg';

/** The first line of a migration that is to run while the shop works: each of its statements on its own, in no transaction. */
const MARK = /^-- outside a transaction\s*\n/i;
const STATEMENT =
  /^(?:CREATE (?:UNIQUE )?INDEX CONCURRENTLY "?([A-Za-z_][A-Za-z0-9_]*)"? ON |DROP INDEX CONCURRENTLY IF EXISTS )/i;

export const runsOutside = (sql: string): boolean => MARK.test(sql);

/**
 * The statements of such a migration. Since nothing of it is rolled back when it breaks off, it may hold only what can be
 * begun again: indexes that are made, or dropped, beside the work of the shop. Throws a sentence naming anything else.
 */
export function statementsOf(sql: string): readonly string[] {
  const statements = sql
    .replaceAll(/^\s*--.*$/gm, '')
    .split(/;\s*(?:\n|$)/)
    .map((text) => text.trim().replaceAll(/\s+/g, ' '))
    .filter((text) => text !== '');
  const other = statements.find((text) => !STATEMENT.test(text));
  if (other === undefined) return statements;
  throw new Error(
    `A migration that runs outside a transaction may hold only CREATE INDEX CONCURRENTLY with a name and DROP INDEX ` +
      `CONCURRENTLY IF EXISTS, but not: ${other.slice(0, 80)}`,
  );
}

/** The same for a database where nobody works: inside of whatever transaction it is put. */
export const insideAfterAll = (sql: string): string =>
  statementsOf(sql)
    .map((text) => `${text.replace(/ CONCURRENTLY/i, '')};`)
    .join('\n');

/**
 * Runs the statements one after the other. An index that is whole already is left; one that an earlier try left half made
 * (PostgreSQL keeps it, and marks it invalid) is dropped and made again.
 */
export async function runOutside(client: ClientBase, sql: string): Promise<void> {
  // Making such an index waits for transactions that are open, and nobody waits for it.
  await client.query('SET lock_timeout = 0; SET statement_timeout = 0');
  for (const statement of statementsOf(sql)) {
    const name = STATEMENT.exec(statement)?.[1];
    const found = name === undefined ? null : await validityOf(client, name);
    if (found === 'valid') continue;
    if (found === 'half made') await client.query(`DROP INDEX CONCURRENTLY IF EXISTS "${name}"`);
    await client.query(statement);
  }
}

async function validityOf(client: ClientBase, name: string): Promise<'valid' | 'half made' | null> {
  const { rows } = await client.query<{ valid: boolean }>(
    `SELECT i.indisvalid AS valid FROM pg_index i JOIN pg_class c ON c.oid = i.indexrelid
     WHERE c.relname = $1 AND c.relnamespace = current_schema()::regnamespace`,
    [name],
  );
  if (rows.length === 0) return null;
  return rows[0]!.valid ? 'valid' : 'half made';
}
