import type { BulkStore } from '../../usecases';
import type { Db } from '../db';

type Actions = Pick<BulkStore, 'saveSchemes' | 'saveShopData' | 'addSources' | 'closeEnded' | 'addSupersessions'>;

/** What only a rulebook file brings. */
export function documentActions(db: Db): Actions {
  return {
    async saveSchemes(rows, personId) {
      const text = JSON.stringify(rows);
      const changed = await db.$executeRaw`
        UPDATE serial_scheme s SET scheme = r.scheme, version = s.version + 1, updated_at = now(),
               updated_by = ${personId}::int
        FROM jsonb_to_recordset(${text}::jsonb) AS r(scheme jsonb, before jsonb)
        WHERE s.id = (r.before->>'id')::int AND s.version = (r.before->>'version')::int`;
      const added = await db.$executeRaw`
        INSERT INTO serial_scheme (maker_id, code, scheme, updated_by)
        SELECT r."makerId", r.scheme->>'id', r.scheme, ${personId}::int
        FROM jsonb_to_recordset(${text}::jsonb) AS r("makerId" int, scheme jsonb, before jsonb)
        WHERE r.before IS NULL OR r.before = 'null'::jsonb
        ON CONFLICT (code) DO NOTHING`;
      return changed + added;
    },
    async saveShopData(schemes, editions, personId) {
      await db.$executeRaw`
        INSERT INTO serial_scheme (maker_id, code, scheme, updated_by)
        SELECT m.id, one->>'id', one, ${personId}::int
        FROM jsonb_array_elements(${JSON.stringify(schemes)}::jsonb) one JOIN maker m ON m.code = one->>'maker'
        ON CONFLICT (code) DO UPDATE SET scheme = EXCLUDED.scheme, version = serial_scheme.version + 1,
          updated_at = now(), updated_by = EXCLUDED.updated_by`;
      await db.$executeRaw`
        INSERT INTO standard_edition (standard, edition, data, updated_by)
        SELECT one->>'standard', one->>'edition', one, ${personId}::int
        FROM jsonb_array_elements(${JSON.stringify(editions)}::jsonb) one
        ON CONFLICT (standard, edition) DO UPDATE SET data = EXCLUDED.data, version = standard_edition.version + 1,
          updated_at = now(), updated_by = EXCLUDED.updated_by`;
    },
    async addSources(rows) {
      await db.$executeRaw`
        INSERT INTO source (key, kind, publisher, number, title, summary, issued, effective, received, state,
                            published_at, withdrawn_at, withdrawn_why)
        SELECT r.key, r.kind, r.publisher, r.number, r.title, r.summary, r.issued, r.effective, r.received,
               CASE WHEN r.withdrawn->>'at' IS NULL THEN 'published' ELSE 'withdrawn' END,
               r."publishedAt", (r.withdrawn->>'at')::timestamptz, r.withdrawn->>'why'
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
          AS r(key text, kind text, publisher text, number text, title text, summary text, issued date, effective date,
               received date, "publishedAt" timestamptz, withdrawn jsonb)`;
    },
    async closeEnded(revision) {
      await db.$executeRaw`
        UPDATE fit_rule SET closed_by = ${revision}::int WHERE closed_by IS NULL AND NOT upper_inf(known)`;
    },
    async addSupersessions(rows) {
      await db.$executeRaw`
        INSERT INTO supersession (from_key, to_key, direction, known_from, known_to)
        SELECT r."from", r."to", r.direction, coalesce((r.known->>'from')::timestamptz, '-infinity'),
               (r.known->>'to')::timestamptz
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r("from" text, "to" text, direction text, known jsonb)`;
    },
  };
}
