import type { Pool } from 'pg';

/** A sum over every row of every table but those that are left out, by table. */
export async function sums(pool: Pool, leftOut: readonly string[] = []): Promise<Record<string, string>> {
  const { rows: tables } = await pool.query<{ name: string }>(
    `SELECT relname AS name FROM pg_class
     WHERE relkind = 'r' AND relnamespace = 'public'::regnamespace AND NOT relname = ANY ($1) ORDER BY relname`,
    [['_prisma_migrations', ...leftOut]],
  );
  const sum = async (name: string) => {
    const { rows } = await pool.query<{ sum: string }>(
      `SELECT md5(coalesce(string_agg(one, ',' ORDER BY one), '')) AS sum FROM (SELECT to_jsonb(t)::text AS one FROM "${name}" t) r`,
    );
    return [name, rows[0]!.sum] as const;
  };
  return Object.fromEntries(await Promise.all(tables.map(({ name }) => sum(name))));
}
