import type { RecomputeScope } from '../../contracts';
import type { UnitStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { envelopeColumns, writeDaySet } from './day-set-text';

/** Unit `u` is one whose build days are to be worked out again. */
export function isTouched({ lines, evidence }: RecomputeScope): Prisma.Sql {
  const ofLine =
    lines === null
      ? Prisma.sql`TRUE`
      : Prisma.sql`u.line_id IN (SELECT id FROM product_line WHERE code = ANY(${[...lines]}::text[]))`;
  const holds =
    evidence === null
      ? Prisma.sql`TRUE`
      : Prisma.sql`EXISTS (SELECT 1 FROM evidence e WHERE e.unit_id = u.id AND e.kind = ${evidence})`;
  return Prisma.sql`${ofLine} AND ${holds}`;
}

/** Evidence `e`, with `p` the person who set it aside, as the use cases read it. */
export const EVIDENCE_ROW = Prisma.sql`jsonb_build_object('id', e.id, 'kind', e.kind, 'data', e.data, 'setAside',
  CASE WHEN e.set_aside_why IS NULL THEN NULL
       ELSE jsonb_build_object('why', e.set_aside_why, 'by', p.name, 'at',
            to_char(e.set_aside_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) END)`;

export function recomputeActions(db: Db): Pick<UnitStore, 'lockTouched' | 'evidenced' | 'setBuiltMany'> {
  return {
    async lockTouched(scope, fromUnit, toUnit) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        SELECT u.id FROM unit u
        WHERE u.id BETWEEN ${fromUnit}::int AND ${toUnit}::int AND ${isTouched(scope)}
        ORDER BY u.id FOR NO KEY UPDATE`;
      return rows.map(({ id }) => id);
    },
    evidenced: (ids) => db.$queryRaw`
      SELECT u.id, u.serial,
             CASE WHEN l.id IS NULL THEN NULL ELSE json_build_object('id', l.id, 'code', l.code, 'name', l.name,
                  'sketch', '', 'producedFrom', l.produced_from, 'producedUntil', l.produced_until) END AS line,
             CASE WHEN k.id IS NULL THEN NULL
                  ELSE json_build_object('id', k.id, 'code', k.code, 'name', k.name) END AS maker,
             coalesce((SELECT jsonb_agg(${EVIDENCE_ROW} ORDER BY e.id)
                       FROM evidence e LEFT JOIN person p ON p.id = e.set_aside_by
                       WHERE e.unit_id = u.id), '[]'::jsonb) AS evidence
      FROM unit u LEFT JOIN product_line l ON l.id = u.line_id LEFT JOIN maker k ON k.id = l.maker_id
      WHERE u.id = ANY(${[...ids]}::int[]) ORDER BY u.id`,
    async setBuiltMany(built) {
      const rows = built.map(({ id, built: days, serialScheme, serialKey }) => {
        const { from, to } = envelopeColumns(days);
        return { id, days: writeDaySet(days), from, to, scheme: serialScheme, key: serialKey };
      });
      await db.$executeRaw`
        WITH given AS (
          SELECT * FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
            AS g(id int, days int4multirange, "from" int, "to" int, scheme text, key text)),
        changed AS (
          UPDATE unit u SET built = g.days, built_from = g."from", built_to = g."to", serial_scheme = g.scheme,
                 serial_key = g.key
          FROM given g
          WHERE u.id = g.id AND (u.built, u.serial_scheme, u.serial_key) IS DISTINCT FROM (g.days, g.scheme, g.key)
          RETURNING u.id, u.built_from, u.built_to)
        UPDATE install i SET built_from = c.built_from, built_to = c.built_to
        FROM changed c
        WHERE i.unit_id = c.id AND (i.built_from, i.built_to) IS DISTINCT FROM (c.built_from, c.built_to)`;
    },
  };
}
