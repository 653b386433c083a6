import type { ClientBase } from 'pg';

/** The role the programs work as: it owns nothing, and of the trail it may only read. */
export const APP_ROLE = 'revright_app';

/**
 * Gives up what a new connection could do as the owner of the tables. Where the role could not be made (the migration
 * says so) the connection stays as it is.
 */
export async function workAsApp(client: ClientBase): Promise<void> {
  await client.query(
    `SELECT set_config('role', rolname, false) FROM pg_roles WHERE rolname = $1 AND pg_has_role(oid, 'MEMBER')`,
    [APP_ROLE],
  );
}
