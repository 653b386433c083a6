import type { CallbackHead, CallbackStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';
import { orderCallback } from './order-callback';
import { addAttempt, addLetters, inBatch } from './attempts';
import { atLocation, readCallbackPage, readCallbacks } from './read-callbacks';

export function callbackStore(db: Db): CallbackStore {
  return {
    page: (query) => readCallbackPage(db, query),
    find: async (id) => (await readCallbacks(db, Prisma.sql`c.id = ${id}::int`, 1))[0] ?? null,
    openOf: async (unitId) =>
      (await readCallbacks(db, Prisma.sql`c.unit_id = ${unitId}::int AND c.state IN ('open', 'booked')`, 1))[0] ?? null,
    some: (ids, locationId) =>
      readCallbacks(db, Prisma.sql`c.id = ANY(${[...ids]}::int[]) AND ${atLocation(locationId)}`, ids.length),
    ofBatch: (batch, locationId) =>
      readCallbacks(db, Prisma.sql`${inBatch(batch)} AND ${atLocation(locationId)}`, null),
    async isAt(id, locationId) {
      const rows = await db.$queryRaw<unknown[]>`
        SELECT 1 FROM callback c JOIN owner o ON o.id = c.owner_id
        WHERE c.id = ${id}::int AND (${locationId}::int IS NULL OR o.location_id = ${locationId}::int)`;
      return rows.length > 0;
    },
    lock: (id) => head(db, Prisma.sql`id = ${id}::int`),
    lockOfUnit: (unitId) => head(db, Prisma.sql`unit_id = ${unitId}::int AND state IN ('open', 'booked')`),
    addAttempt: addAttempt(db),
    addLetters: addLetters(db),
    async tryAgainOn(ids, day) {
      await db.$executeRaw`
        UPDATE callback SET next_on = ${day}::date, version = version + 1 WHERE id = ANY(${[...ids]}::int[])`;
    },
    async addSentMail(id, personId) {
      await db.$executeRaw`
        INSERT INTO callback_attempt (callback_id, person_id, how, outcome) VALUES (${id}::int, ${personId}::int, 'email', 'sent')`;
    },
    async book(id, ticketId) {
      await db.$executeRaw`
        UPDATE callback SET state = 'booked', ticket_id = ${ticketId}::int, version = version + 1 WHERE id = ${id}::int`;
    },
    async close(id, state, why) {
      await db.$executeRaw`
        UPDATE callback SET state = ${state}, closed_at = now(), closed_why = ${why}, version = version + 1
        WHERE id = ${id}::int`;
    },
    order: (order) => orderCallback(db, order),
  };
}

async function head(db: Db, where: Prisma.Sql): Promise<CallbackHead | null> {
  const rows = await db.$queryRaw<CallbackHead[]>`
    SELECT id, unit_id AS "unitId", owner_id AS "ownerId", state, ticket_id AS "ticketId", version
    FROM callback WHERE ${where} FOR UPDATE`;
  return rows[0] ?? null;
}
