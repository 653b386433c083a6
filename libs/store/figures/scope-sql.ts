import { formatDay, type Day } from '../../day';
import type { FigureScope } from '../../usecases';
import { Prisma } from '../generated/client';

/** The instant at which a day begins in the shop's time zone. */
const startOf = (day: Day, zone: string): Prisma.Sql =>
  Prisma.sql`(${formatDay(day)}::timestamp AT TIME ZONE ${zone}::text)`;

/** The instant in the column lies within the days. */
export const within = (column: string, { from, to }: Pick<FigureScope, 'from' | 'to'>, zone: string): Prisma.Sql =>
  Prisma.sql`(${Prisma.raw(column)} >= ${startOf(from, zone)} AND ${Prisma.raw(column)} < ${startOf(to, zone)})`;

/** The location in the column is the one asked for; any where none is. */
export const at = (column: string, locationId: number | null): Prisma.Sql =>
  locationId === null ? Prisma.sql`TRUE` : Prisma.sql`${Prisma.raw(column)} = ${locationId}::int`;

/** The tickets that were taken in within the days and not cancelled, as `taken_in`. */
export const takenIn = (scope: FigureScope, zone: string): Prisma.Sql => Prisma.sql`
  taken_in AS MATERIALIZED (
    SELECT t.id, t.bench_id, t.location_id, t.unit_id FROM ticket t
    WHERE ${within('t.opened_at', scope, zone)} AND t.cancel_reason IS NULL AND ${at('t.location_id', scope.locationId)})`;

/** A part as the page names it. */
export const partJson = (alias: string): Prisma.Sql =>
  Prisma.raw(`jsonb_build_object('key', ${alias}.key, 'number', ${alias}.number, 'name', ${alias}.name)`);
