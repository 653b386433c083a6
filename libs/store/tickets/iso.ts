import { Prisma } from '../generated/client';

/** An instant column as ISO 8601 in UTC with milliseconds, ready for the wire. */
export function iso(column: string): Prisma.Sql {
  return Prisma.sql`to_char(${Prisma.raw(column)} AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;
}
