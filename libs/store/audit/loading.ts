import type { Db } from '../db';

/** From here to the end of the transaction a whole shop is loaded: by the owner of the tables, with one row in the trail. */
export async function beginLoading(db: Db): Promise<void> {
  await db.$executeRaw`
    SELECT set_config('role', 'none', true), set_config('revright.loading', 'on', true),
           set_config('revright.sight', 'all', true)`;
}

/** Adds the one row that stands for everything loaded, and says how many rows of the trail were loaded with it. */
export async function endLoading(db: Db, what: string): Promise<void> {
  await db.$executeRaw`
    SELECT audit_append('loaded', 'shop', ${what}, NULL, jsonb_build_object(
      'units', (SELECT count(*) FROM unit), 'tickets', (SELECT count(*) FROM ticket),
      'people', (SELECT count(*) FROM person), 'rules', (SELECT count(*) FROM fit_rule), 'trail', (SELECT count(*) FROM audit_entry)))`;
}
