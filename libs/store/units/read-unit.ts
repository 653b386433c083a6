import type { UnitRow } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import type { Id } from '../nested';
import { readDaySet } from './day-set-text';

/** A unit as the question answers it; {@link unitFrom} reads its days. */
export type UnitColumns = Omit<UnitRow, 'built'> & { readonly built: string };

export const unitFrom = (row: UnitColumns): UnitRow => ({ ...row, built: readDaySet(row.built) });

/** One unit with its owner, line, maker and model; null when there is none. */
export async function readUnit(db: Db, id: number): Promise<UnitRow | null> {
  const rows = await db.$queryRaw<UnitColumns[]>(unitOf(id));
  return rows[0] ? unitFrom(rows[0]) : null;
}

export const unitOf = (id: Id): Prisma.Sql => Prisma.sql`
    SELECT u.id, u.version, u.serial, u.serial_absent AS "serialAbsent", u.serial_scheme AS "serialScheme",
           u.serial_key AS "serialKey", u.options, u.plate, u.built::text AS built,
           CASE WHEN u.bought_on IS NULL THEN NULL ELSE json_build_object('boughtOn', u.bought_on, 'months', u.warranty_months)
           END AS warranty,
           json_build_object('id', o.id, 'name', o.name, 'phone', o.phone, 'email', o.email, 'address', o.address,
                             'consent', o.consent, 'version', o.version) AS owner,
           CASE WHEN l.id IS NULL THEN NULL ELSE json_build_object('id', l.id, 'code', l.code, 'name', l.name,
                'sketch', l.sketch, 'producedFrom', l.produced_from, 'producedUntil', l.produced_until) END AS line,
           CASE WHEN k.id IS NULL THEN NULL
                ELSE json_build_object('id', k.id, 'code', k.code, 'name', k.name) END AS maker,
           CASE WHEN m.id IS NULL THEN NULL
                ELSE json_build_object('id', m.id, 'number', m.number, 'name', m.name) END AS model
    FROM unit u
    JOIN owner o ON o.id = u.owner_id
    LEFT JOIN product_line l ON l.id = u.line_id
    LEFT JOIN maker k ON k.id = l.maker_id
    LEFT JOIN model m ON m.id = u.model_id
    WHERE u.id = ${id}`;
