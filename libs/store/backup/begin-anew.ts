import type { ClientBase } from 'pg';
import type { Manifest } from './manifest';

const NOT_KNOWN = (takenAt: string) => `Put back from a backup of ${takenAt}; whether it has gone since is not known.`;

/**
 * What must not go on as it stood when the backup was taken: nobody is signed in any more; work that a program had taken
 * on is free for another; and whether an e-mail that was about to go has gone since, nobody knows. So none of those goes by
 * itself: a manager looks first. One row in the trail says that all this was put back.
 */
export async function beginAnew(client: ClientBase, { takenAt, trail, tables }: Manifest): Promise<void> {
  // An older backup may not have some of them yet.
  const has = new Set(tables.map(({ name }) => name));
  for (const table of ['session', 'sign_in_step']) if (has.has(table)) await client.query(`DELETE FROM ${table}`);
  await client.query('UPDATE outbox SET leased_until = NULL WHERE dispatched_at IS NULL');
  await client.query(`UPDATE recheck_chunk SET leased_until = NULL WHERE state = 'waiting'`);
  if (has.has('callback_mail'))
    await client.query(
      `UPDATE callback_mail SET state = 'unclear', leased_until = NULL, problem = $1 WHERE state IN ('queued', 'sending')`,
      [NOT_KNOWN(takenAt)],
    );
  await client.query(`SELECT audit_append('restored', 'shop', $1, NULL, $2)`, [
    `a backup of ${takenAt} was put in`,
    { trailRows: trail.rows, head: trail.head },
  ]);
}
