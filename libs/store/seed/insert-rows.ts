import type { Db } from '../db';
import { takeIds } from '../take-ids';
import { Prisma } from '../generated/client';

/** Rows that go over in one statement; more would only make the text of it larger. */
const AT_ONCE = 5_000;

/** Column name to its PostgreSQL type. Both come from the seeder's own source, never from a person. */
export type Columns = Readonly<Record<string, string>>;

/** Inserts rows, keyed by column name, set-based. */
export async function insertRows(db: Db, table: string, columns: Columns, rows: readonly object[]): Promise<void> {
  const names = Object.keys(columns).map((name) => `"${name}"`);
  const typed = Object.entries(columns).map(([name, type]) => `"${name}" ${type}`);
  const [into, list, record] = [`"${table}"`, names.join(', '), typed.join(', ')].map((text) => Prisma.raw(text));
  for (let from = 0; from < rows.length; from += AT_ONCE) {
    const chunk = JSON.stringify(rows.slice(from, from + AT_ONCE));
    await db.$executeRaw`
      INSERT INTO ${into} (${list}) SELECT ${list} FROM jsonb_to_recordset(${chunk}::jsonb) AS r(${record})`;
  }
}

/** Takes an id for each key and remembers which is whose. */
export async function idsFor(db: Db, table: string, keys: readonly string[]): Promise<IdsByKey> {
  const ids = await takeIds(db, table, keys.length);
  return new IdsByKey(table, new Map(keys.map((key, at) => [key, ids[at]!])));
}

/** Ids by the key the seed data uses; asking for a key that is not there is a bug in the data. */
export class IdsByKey {
  constructor(
    private readonly table: string,
    private readonly ids: ReadonlyMap<string, number>,
  ) {}

  of(key: string): number {
    const id = this.ids.get(key);
    if (id === undefined) throw new RangeError(`no ${this.table} is called ${key}`);
    return id;
  }
}
