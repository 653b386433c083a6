import type { RevisionMark, RulebookStore, StoredRule } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { knownFile } from './known-sql';
import { loadRulebookFile } from './load-rulebook-file';
import { closeRules, openRules } from './write-rules';

/** Shared while verdicts are written, taken alone while the rulebook changes. Any fixed number. */
const RULEBOOK_LOCK = 4_780_010;

export function rulebookStore(db: Db): RulebookStore {
  return {
    latest: () => latest(db),
    async share() {
      await db.$queryRaw`SELECT 1 AS held FROM pg_advisory_xact_lock_shared(${RULEBOOK_LOCK}::bigint)`;
      return latest(db);
    },
    async alone() {
      await db.$queryRaw`SELECT 1 AS held FROM pg_advisory_xact_lock(${RULEBOOK_LOCK}::bigint)`;
      return latest(db);
    },
    async addRevision({ cause, sourceId, personId }) {
      const rows = await db.$queryRaw<{ revision: number; at: Date }[]>`
        INSERT INTO rulebook_revision (at, cause, source_id, person_id)
        VALUES (date_trunc('milliseconds', clock_timestamp()), ${cause}, ${sourceId}::int, ${personId}::int)
        RETURNING id AS revision, at`;
      return { revision: rows[0]!.revision, at: rows[0]!.at.getTime() };
    },
    load: () => loadRulebookFile(db),
    async loadSince({ revision, stamp }) {
      const rows = await db.$queryRaw<{ stamp: string }[]>`
        SELECT ${STAMP} AS stamp FROM rulebook_revision r JOIN pg_database d ON d.datname = current_database()
        WHERE r.id = ${revision}::int`;
      return rows[0]?.stamp === stamp ? loadRulebookFile(db, revision) : null;
    },
    versionsOf: (keys) => versions(db, Prisma.sql`r.key = ANY(${[...keys]}::text[])`),
    versionsOfSource: (sourceId) => versions(db, Prisma.sql`r.source_id = ${sourceId}::int`),
    versionsClosedBy: (revision) => versions(db, Prisma.sql`r.closed_by = ${revision}::int`),
    open: (rules, revision) => openRules(db, rules, revision),
    close: (keys, at, revision) => closeRules(db, keys, at, revision),
    async revisionThatPublished(sourceId) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        SELECT id FROM rulebook_revision WHERE source_id = ${sourceId}::int AND cause = 'publish' ORDER BY id DESC LIMIT 1`;
      return rows[0]?.id ?? null;
    },
  };
}

/** Tells revision `r` of database `d` from every other. */
export const STAMP = Prisma.sql`concat_ws(' ', r.id, extract(epoch FROM r.at), d.oid)`;

async function latest(db: Db): Promise<RevisionMark> {
  const rows = await db.$queryRaw<{ revision: number | null; stamp: string | null; now: Date }[]>`
    SELECT r.id AS revision, ${STAMP} AS stamp,
           clock_timestamp() AS now
    FROM pg_database d LEFT JOIN LATERAL (SELECT id, at FROM rulebook_revision ORDER BY id DESC LIMIT 1) r ON TRUE
    WHERE d.datname = current_database()`;
  const { revision, stamp, now } = rows[0]!;
  return { revision: revision ?? 0, stamp: stamp ?? '', now: now.getTime() };
}

async function versions(db: Db, where: Prisma.Sql): Promise<readonly StoredRule[]> {
  return db.$queryRaw<StoredRule[]>`
    SELECT r.rule || ${knownFile('r')} AS rule, r.source_id AS "sourceId", r.opened_by AS "openedBy",
           r.closed_by AS "closedBy"
    FROM fit_rule r WHERE ${where} ORDER BY r.key, r.version`;
}
