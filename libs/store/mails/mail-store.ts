import type { MailStore, WaitingMail } from '../../usecases';
import type { Db } from '../db';

export function mailStore(db: Db): MailStore {
  return {
    async queue(mails, personId) {
      if (mails.length === 0) return [];
      const rows = await db.$queryRaw<{ callbackId: number }[]>`
        INSERT INTO callback_mail (callback_id, wording, recipient, subject, text, html, queued_by)
        SELECT m."callbackId", m.wording, m.recipient, m.subject, m.text, m.html, ${personId}::int
        FROM jsonb_to_recordset(${JSON.stringify(mails)}::jsonb)
          AS m("callbackId" int, wording text, recipient text, subject text, text text, html text)
        ON CONFLICT (callback_id, wording) DO NOTHING RETURNING callback_id AS "callbackId"`;
      return rows.map(({ callbackId }) => callbackId);
    },
    async claim(leaseSeconds) {
      const rows = await db.$queryRaw<WaitingMail[]>`
        UPDATE callback_mail SET state = 'sending', tries = tries + 1,
               leased_until = now() + make_interval(secs => ${leaseSeconds}::int)
        WHERE id = (SELECT id FROM callback_mail WHERE state = 'queued' AND next_try_at <= now()
                    ORDER BY next_try_at, id LIMIT 1 FOR UPDATE SKIP LOCKED)
        RETURNING id, callback_id AS "callbackId", recipient, subject, text, html, tries, queued_by AS "queuedBy"`;
      return rows[0] ?? null;
    },
    async end(id, state, problem) {
      await db.$executeRaw`
        UPDATE callback_mail SET state = ${state}, problem = ${problem},
               sent_at = CASE WHEN ${state} = 'sent' THEN now() END
        WHERE id = ${id}::int AND state = 'sending'`;
    },
    async later(id, seconds, problem) {
      await db.$executeRaw`
        UPDATE callback_mail SET state = 'queued', problem = ${problem},
               next_try_at = now() + make_interval(secs => ${seconds}::int)
        WHERE id = ${id}::int AND state = 'sending'`;
    },
    markUnclear: (problem) => db.$executeRaw`
      UPDATE callback_mail SET state = 'unclear', problem = ${problem}
      WHERE state = 'sending' AND leased_until < now()`,
  };
}
