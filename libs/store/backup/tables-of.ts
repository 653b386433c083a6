import { createHash } from 'node:crypto';
import type { ClientBase } from 'pg';
import { to } from 'pg-copy-streams';
import { rowsIn } from './archive';
import type { TableOfBackup } from './manifest';

/** A table as it is copied. */
export interface TableShape {
  readonly name: string;
  readonly columns: readonly string[];
  /** By what its rows are put in order, as SQL. */
  readonly order: string;
}

export const quoted = (name: string): string => `"${name.replaceAll('"', '""')}"`;

/** Everything that would make the same rows another text, on whatever server and however that is set up. */
export async function speakPlainly(client: ClientBase): Promise<void> {
  await client.query(`
    SET LOCAL datestyle = 'ISO, YMD'; SET LOCAL intervalstyle = 'iso_8601'; SET LOCAL timezone = 'UTC';
    SET LOCAL extra_float_digits = 1; SET LOCAL bytea_output = 'hex'; SET LOCAL client_encoding = 'UTF8';
    SET LOCAL statement_timeout = 0; SET LOCAL lock_timeout = 0; SET LOCAL idle_in_transaction_session_timeout = 0`);
}

/**
 * Every table, each after those its rows refer to, with the columns that are written (not those worked out by the database)
 * and its key. Texts are ordered by code point, since each server has its own idea of the alphabet.
 */
export async function tablesOf(client: ClientBase): Promise<readonly TableShape[]> {
  const { rows } = await client.query<TableShape & { refersTo: string[] }>(`
    SELECT c.relname AS name,
      ARRAY(SELECT a.attname::text FROM pg_attribute a
            WHERE a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = '' ORDER BY a.attnum) AS columns,
      (SELECT string_agg(quote_ident(a.attname) || CASE WHEN a.attcollation <> 0 THEN ' COLLATE "C"' ELSE '' END, ', ' ORDER BY k.n)
       FROM pg_index i, unnest(i.indkey) WITH ORDINALITY AS k(attnum, n), pg_attribute a
       WHERE i.indrelid = c.oid AND i.indisprimary AND a.attrelid = c.oid AND a.attnum = k.attnum) AS "order",
      ARRAY(SELECT r.relname::text FROM pg_constraint f JOIN pg_class r ON r.oid = f.confrelid
            WHERE f.conrelid = c.oid AND f.contype = 'f' AND f.confrelid <> c.oid) AS "refersTo"
    FROM pg_class c WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' ORDER BY c.relname`);
  const keyless = rows.find(({ order }) => order === null);
  if (keyless)
    throw new Error(`The table ${keyless.name} has no primary key, so its rows have no order to copy them in.`);
  return inOrder(rows);
}

function inOrder(tables: readonly (TableShape & { readonly refersTo: readonly string[] })[]): readonly TableShape[] {
  const [done, left] = [new Map<string, TableShape>(), new Set(tables)];
  while (left.size > 0) {
    const ready = [...left].filter(({ refersTo }) => refersTo.every((name) => done.has(name)));
    if (ready.length === 0)
      throw new Error(`These tables refer to each other in a circle: ${[...left].map(({ name }) => name).join(', ')}.`);
    for (const table of ready) {
      left.delete(table);
      done.set(table.name, { name: table.name, columns: table.columns, order: table.order });
    }
  }
  return [...done.values()];
}

/** Copies a table out, row after row by its key, and answers what the manifest says of it. */
export async function copyOut(
  client: ClientBase,
  { name, columns, order }: TableShape,
  take: (bytes: Buffer) => Promise<void> = () => Promise.resolve(),
): Promise<TableOfBackup> {
  const hash = createHash('sha256');
  let rows = 0;
  const list = columns.map(quoted).join(', ');
  const copying = client.query(to(`COPY (SELECT ${list} FROM ${quoted(name)} ORDER BY ${order}) TO STDOUT`));
  for await (const bytes of copying as AsyncIterable<Buffer>) {
    hash.update(bytes);
    rows += rowsIn(bytes);
    await take(bytes);
  }
  return { name, columns: [...columns], rows, sha256: hash.digest('hex') };
}
