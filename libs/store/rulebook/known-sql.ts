import { Prisma } from '../generated/client';

const ISO = Prisma.raw(`'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'`);

/** The known span of rule version `alias` as the rule's file writes it, ready to be laid over the stored file. */
export function knownFile(alias: 'r'): Prisma.Sql {
  const known = Prisma.raw(`${alias}.known`);
  return Prisma.sql`jsonb_build_object('known', jsonb_build_object(
    'from', to_char(lower(${known}) AT TIME ZONE 'UTC', ${ISO}),
    'to', to_char(upper(${known}) AT TIME ZONE 'UTC', ${ISO})))`;
}
