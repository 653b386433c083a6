import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Client } from 'pg';

/** Where the database of a data folder lies: in it, or where the note in it says. */
export function databaseFolderOf(dataFolder: string): string {
  const note = join(dataFolder, 'database-is-at');
  return existsSync(note) ? readFileSync(note, 'utf8').trim() : join(dataFolder, 'database');
}

/** Process id and port of the server that runs on a data folder, as PostgreSQL itself notes them. */
export function serverOf(dataFolder: string): { readonly pid: number; readonly port: number } {
  const lines = readFileSync(join(databaseFolderOf(dataFolder), 'postmaster.pid'), 'utf8').split('\n');
  return { pid: Number(lines[0]), port: Number(lines[3]) };
}

/** Asks the running database of a data folder, as its operator would with the password kept there. */
export async function askDatabase<Row extends object>(dataFolder: string, statement: string): Promise<Row[]> {
  const client = new Client({
    host: '127.0.0.1',
    port: serverOf(dataFolder).port,
    user: 'revright',
    password: readFileSync(join(dataFolder, 'database-password'), 'utf8').trim(),
    database: 'postgres',
  });
  await client.connect();
  try {
    return (await client.query<Row>(statement)).rows;
  } finally {
    await client.end();
  }
}
