interface Asked {
  query<Row>(text: string): Promise<{ readonly rows: readonly Row[] }>;
}

/** How many of these migrations are not made in the database. Also a login that owns nothing may ask. */
export async function missingMigrations(database: Asked, known: readonly string[]): Promise<number> {
  const { rows } = await database.query<{ name: string }>('SELECT migrations_applied() AS name');
  const applied = new Set(rows.map(({ name }) => name));
  return known.filter((name) => !applied.has(name)).length;
}
