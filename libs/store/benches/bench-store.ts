import type { BenchTicket } from '../../contracts';
import type { BenchDayRow, BenchStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { CARD, CARD_TABLES } from '../tickets/card-columns';
import { putOnBench } from './put-on-bench';

export function benchStore(db: Db): BenchStore {
  return {
    at: (locationId) => db.$queryRaw<BenchDayRow[]>`
      SELECT b.id, b.code, b.name, l.name AS location, b.day_minutes AS "dayMinutes", b.version
      FROM bench b JOIN location l ON l.id = b.location_id WHERE l.id = ${locationId} ORDER BY b.code`,
    tickets: (locationId) => readListed(db, Prisma.sql`t.location_id = ${locationId}`),
    ticketsOn: (benchId) => readListed(db, Prisma.sql`t.bench_id = ${benchId}`),
    async lock(benchIds) {
      await db.$queryRaw`
        SELECT id FROM bench WHERE id = ANY(${[...benchIds]}::int[]) ORDER BY id FOR NO KEY UPDATE`;
    },
    placeOf: (ticketId) => placeOf(db, ticketId),
    put: putOnBench(db),
    async setDay(benchId, version, minutes) {
      const count = await db.$executeRaw`
        UPDATE bench SET day_minutes = ${minutes}::int, version = version + 1
        WHERE id = ${benchId} AND version = ${version}::int`;
      return count === 1;
    },
    async ofPerson(personId) {
      const rows = await db.$queryRaw<{ benchId: number | null }[]>`
        SELECT bench_id AS "benchId" FROM person WHERE id = ${personId}`;
      return rows[0]?.benchId ?? null;
    },
    async setOfPerson(personId, benchId) {
      await db.$executeRaw`UPDATE person SET bench_id = ${benchId}::int WHERE id = ${personId}`;
    },
  };
}

function readListed(db: Db, where: Prisma.Sql): Promise<BenchTicket[]> {
  return db.$queryRaw<BenchTicket[]>`
    SELECT ${CARD}, t.labour_minutes AS "labourMinutes" FROM ${CARD_TABLES}
    WHERE t.closed_at IS NULL AND ${where}
    ORDER BY t.bench_id NULLS FIRST, t.bench_rank, t.promised_on NULLS LAST, t.id`;
}

/** The row is held too: a ticket that is on no bench has no list that could be. */
async function placeOf(db: Db, ticketId: number): Promise<{ benchId: number | null } | null> {
  const rows = await db.$queryRaw<{ benchId: number | null }[]>`
    SELECT bench_id AS "benchId" FROM ticket WHERE id = ${ticketId} AND closed_at IS NULL FOR NO KEY UPDATE`;
  return rows[0] ?? null;
}
