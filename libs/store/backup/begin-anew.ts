import type { ClientBase } from 'pg';
import type { Manifest } from './manifest';

const NOT_KNOWN = (takenAt: string) => `Put back from a backup of ${takenAt}; whether it has gone since is not known.`;

/**
 * What must not go on as it stood when the backup was taken: nobody is signed in any more, no link and no token made
 * before opens the shop, since either may have been used up or revoked after; work that a program had taken on is free
 * for another; and whether an e-mail or an event that was about to go has gone since, nobody knows. So none of those goes
 * by itself: a manager looks first, and webhooks are switched on by hand where this is the shop and not a drill. New events
 * bear numbers above any that a receiver can have seen. One row in the trail says that all this was put back.
 */
export async function beginAnew(client: ClientBase, { takenAt, trail, tables }: Manifest): Promise<void> {
  // An older backup may not have some of them yet.
  const has = new Set(tables.map(({ name }) => name));
  for (const table of ['session', 'sign_in_step', 'invitation'])
    if (has.has(table)) await client.query(`DELETE FROM ${table}`);
  await client.query('UPDATE outbox SET leased_until = NULL WHERE dispatched_at IS NULL');
  await client.query(`UPDATE recheck_chunk SET leased_until = NULL WHERE state = 'waiting'`);
  if (has.has('callback_mail'))
    await client.query(
      `UPDATE callback_mail SET state = 'unclear', leased_until = NULL, problem = $1 WHERE state IN ('queued', 'sending')`,
      [NOT_KNOWN(takenAt)],
    );
  if (has.has('api_token')) await client.query('UPDATE api_token SET revoked_at = now() WHERE revoked_at IS NULL');
  if (has.has('webhook_delivery')) await holdEvents(client, takenAt);
  await client.query(`SELECT audit_append('restored', 'shop', $1, NULL, $2)`, [
    `a backup of ${takenAt} was put in`,
    { trailRows: trail.rows, head: trail.head },
  ]);
}

async function holdEvents(client: ClientBase, takenAt: string): Promise<void> {
  await client.query('UPDATE webhook SET active = FALSE');
  await client.query(
    `UPDATE webhook_delivery SET state = 'set-aside', leased_until = NULL, problem = $1, ended_at = now()
     WHERE state IN ('waiting', 'sending')`,
    [NOT_KNOWN(takenAt)],
  );
  // A receiver passes over an id it has seen. Seconds since 2020 lie above the ids of any shop, and rise with each restore.
  await client.query(`
    SELECT setval('webhook_event_id_seq', greatest(last_value, extract(epoch FROM now() - timestamptz '2020-01-01Z')::bigint))
    FROM webhook_event_id_seq`);
}
