import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { holdings } from '../units/refresh-installs';

/** Brings what many units hold in step with their newest records, with one statement. */
export async function refreshMany(db: Db, unitIds: readonly number[], zone: string): Promise<void> {
  await db.$executeRaw(holdings(Prisma.sql`= ANY(${[...unitIds]}::int[])`, zone));
}
