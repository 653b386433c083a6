import { intakeDraft } from '../../contracts';
import type { IntakeDraftStore } from '../../usecases';
import type { Db } from '../db';

export function intakeDraftStore(db: Db): IntakeDraftStore {
  return {
    async of(personId, since) {
      const rows = await db.$queryRaw<{ draft: unknown }[]>`
        SELECT draft FROM intake_draft WHERE person_id = ${personId}::int AND at >= ${new Date(since)}`;
      // One that an earlier version of the program wrote, in another shape, is as good as none.
      return intakeDraft.safeParse(rows[0]?.draft).data ?? null;
    },
    async keep(personId, draft, at) {
      await db.$executeRaw`
        INSERT INTO intake_draft (person_id, draft, at)
        VALUES (${personId}::int, ${JSON.stringify(draft)}::jsonb, ${new Date(at)})
        ON CONFLICT (person_id) DO UPDATE SET draft = EXCLUDED.draft, at = EXCLUDED.at`;
    },
    async forget(personId) {
      await db.$executeRaw`DELETE FROM intake_draft WHERE person_id = ${personId}::int`;
    },
    async forgetBefore(instant) {
      await db.$executeRaw`DELETE FROM intake_draft WHERE at < ${new Date(instant)}`;
    },
  };
}
