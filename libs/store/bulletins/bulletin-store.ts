import type { BulletinRecord, BulletinStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';

/** The papers of the shop, published or not. */
export function bulletinStore(db: Db): BulletinStore {
  return {
    list: () => read(db, Prisma.sql`WHERE s.key <> 'shop-review' ORDER BY s.issued DESC, s.id DESC`),
    find: async (id) => (await read(db, Prisma.sql`WHERE s.id = ${id}::int`))[0] ?? null,
    lock: async (id) => (await read(db, Prisma.sql`WHERE s.id = ${id}::int FOR UPDATE OF s`))[0] ?? null,
    async insert(key, f) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO source (key, kind, publisher, number, title, summary, issued, effective, received, draft)
        VALUES (${key}, ${f.kind}, ${f.publisher}, ${f.number}, ${f.title}, ${f.summary}, ${f.issued}::date,
                ${f.effective}::date, ${f.received}::date, ${JSON.stringify(f.draft)}::jsonb)
        ON CONFLICT (key) DO NOTHING RETURNING id`;
      return rows[0]?.id ?? null;
    },
    async insertMany(drafts) {
      if (drafts.length === 0) return new Map();
      const rows = await db.$queryRaw<{ id: number; key: string }[]>`
        INSERT INTO source (key, kind, publisher, number, title, summary, issued, effective, received, draft)
        SELECT r.key, r.kind, r.publisher, r.number, r.title, r.summary, r.issued, r.effective, r.received, r.draft
        FROM jsonb_to_recordset(${JSON.stringify(drafts)}::jsonb)
          AS r(key text, kind text, publisher text, number text, title text, summary text, issued date, effective date,
               received date, draft jsonb)
        ON CONFLICT (key) DO NOTHING RETURNING id, key`;
      return new Map(rows.map(({ id, key }) => [key, id]));
    },
    async update(id, f) {
      await db.$executeRaw`
        UPDATE source SET kind = ${f.kind}, publisher = ${f.publisher}, number = ${f.number}, title = ${f.title},
               summary = ${f.summary}, issued = ${f.issued}::date, effective = ${f.effective}::date,
               received = ${f.received}::date, draft = ${JSON.stringify(f.draft)}::jsonb, version = version + 1
        WHERE id = ${id}::int`;
    },
    async markPublished(id, at) {
      await db.$executeRaw`
        UPDATE source SET state = 'published', published_at = ${new Date(at).toISOString()}::timestamptz,
               version = version + 1
        WHERE id = ${id}::int`;
    },
    async markWithdrawn(id, at, why) {
      await db.$executeRaw`
        UPDATE source SET state = 'withdrawn', withdrawn_at = ${new Date(at).toISOString()}::timestamptz,
               withdrawn_why = ${why}, version = version + 1
        WHERE id = ${id}::int`;
    },
    async knownPlaces() {
      const rows = await db.$queryRaw<{ line: string; positions: string[] }[]>`
        SELECT l.code AS line, ARRAY(SELECT code FROM position p WHERE p.line_id = l.id ORDER BY sort_order) AS positions
        FROM product_line l`;
      return new Map(rows.map(({ line, positions }) => [line, new Set(positions)]));
    },
  };
}

type Row = Omit<BulletinRecord, 'publishedAt' | 'withdrawnAt'> & {
  readonly publishedAt: Date | null;
  readonly withdrawnAt: Date | null;
};

async function read(db: Db, rest: Prisma.Sql): Promise<readonly BulletinRecord[]> {
  const rows = await db.$queryRaw<Row[]>`
    SELECT s.id, s.key, s.kind, s.publisher, s.number, s.title, s.summary, s.issued::text, s.effective::text,
           s.received::text, s.state, s.published_at AS "publishedAt", s.withdrawn_at AS "withdrawnAt",
           s.withdrawn_why AS "withdrawnWhy", s.draft, s.version,
           CASE WHEN s.state = 'draft' THEN COALESCE(jsonb_array_length(s.draft->'opens'), 0)
                ELSE (SELECT count(DISTINCT r.key)::int FROM fit_rule r WHERE r.source_id = s.id) END AS "ruleCount"
    FROM source s ${rest}`;
  return rows.map((row) => ({
    ...row,
    publishedAt: row.publishedAt?.toISOString() ?? null,
    withdrawnAt: row.withdrawnAt?.toISOString() ?? null,
  }));
}
