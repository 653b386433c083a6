import type { EditionRow, SchemeRow, ShopDataStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';

const CHANGED = Prisma.sql`
  to_char(d.updated_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') AS "updatedAt", p.name AS "updatedBy"`;

/** Serial schemes and editions of standards, each row with its version. */
export function shopDataStore(db: Db): ShopDataStore {
  return { ...schemeActions(db), ...editionActions(db) };
}

type SchemeActions = 'schemes' | 'scheme' | 'insertScheme' | 'updateScheme';

function schemeActions(db: Db): Pick<ShopDataStore, SchemeActions> {
  return {
    schemes: () => readSchemes(db, Prisma.sql`TRUE`),
    scheme: async (id) => (await readSchemes(db, Prisma.sql`d.id = ${id}::int`))[0] ?? null,
    async insertScheme(makerId, scheme, personId) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO serial_scheme (maker_id, code, scheme, updated_by)
        VALUES (${makerId}::int, ${scheme.id}, ${JSON.stringify(scheme)}::jsonb, ${personId}::int)
        ON CONFLICT (code) DO NOTHING RETURNING id`;
      return rows[0]?.id ?? null;
    },
    async updateScheme(id, version, scheme, personId) {
      const changed = await db.$executeRaw`
        UPDATE serial_scheme SET scheme = ${JSON.stringify(scheme)}::jsonb, version = version + 1,
               updated_at = now(), updated_by = ${personId}::int
        WHERE id = ${id}::int AND version = ${version}::int`;
      return changed === 1;
    },
  };
}

type EditionActions = 'editions' | 'edition' | 'insertEdition' | 'updateEdition' | 'addMissingEditions';

function editionActions(db: Db): Pick<ShopDataStore, EditionActions> {
  return {
    editions: () => readEditions(db, Prisma.sql`TRUE`),
    edition: async (id) => (await readEditions(db, Prisma.sql`d.id = ${id}::int`))[0] ?? null,
    async insertEdition(edition, personId) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        INSERT INTO standard_edition (standard, edition, data, updated_by)
        VALUES (${edition.standard}, ${edition.edition}, ${JSON.stringify(edition)}::jsonb, ${personId}::int)
        ON CONFLICT (standard, edition) DO NOTHING RETURNING id`;
      return rows[0]?.id ?? null;
    },
    async updateEdition(id, version, edition, personId) {
      const changed = await db.$executeRaw`
        UPDATE standard_edition SET standard = ${edition.standard}, edition = ${edition.edition},
               data = ${JSON.stringify(edition)}::jsonb, version = version + 1, updated_at = now(),
               updated_by = ${personId}::int
        WHERE id = ${id}::int AND version = ${version}::int`;
      return changed === 1;
    },
    addMissingEditions: (editions) => db.$executeRaw`
      INSERT INTO standard_edition (standard, edition, data)
      SELECT one->>'standard', one->>'edition', one FROM jsonb_array_elements(${JSON.stringify(editions)}::jsonb) one
      ON CONFLICT (standard, edition) DO NOTHING`,
  };
}

function readSchemes(db: Db, where: Prisma.Sql): Promise<SchemeRow[]> {
  return db.$queryRaw<SchemeRow[]>`
    SELECT d.id, d.version, m.name AS "makerName", d.scheme, ${CHANGED},
           (SELECT count(*)::int FROM unit u WHERE u.serial_scheme = d.code) AS units
    FROM serial_scheme d JOIN maker m ON m.id = d.maker_id LEFT JOIN person p ON p.id = d.updated_by
    WHERE ${where} ORDER BY m.name, d.scheme->>'validFrom' NULLS FIRST, d.id`;
}

function readEditions(db: Db, where: Prisma.Sql): Promise<EditionRow[]> {
  return db.$queryRaw<EditionRow[]>`
    SELECT d.id, d.version, d.data AS edition, ${CHANGED}
    FROM standard_edition d LEFT JOIN person p ON p.id = d.updated_by
    WHERE ${where} ORDER BY d.standard, d.edition DESC`;
}
