import type { CallbackStore } from '../../usecases';
import type { Db } from '../db';
import { Prisma } from '../generated/client';

/** The callback was written to in this batch. */
export const inBatch = (batch: string): Prisma.Sql =>
  Prisma.sql`EXISTS (SELECT FROM callback_attempt a WHERE a.callback_id = c.id AND a.batch = ${batch})`;

export const addAttempt =
  (db: Db): CallbackStore['addAttempt'] =>
  async (id, { how, outcome, note, nextOn, declined }, personId) => {
    await db.$executeRaw`
      INSERT INTO callback_attempt (callback_id, person_id, how, outcome, note)
      VALUES (${id}::int, ${personId}::int, ${how}, ${outcome}, ${note})`;
    await db.$executeRaw`
      UPDATE callback SET version = version + 1, next_on = ${nextOn}::date WHERE id = ${id}::int`;
    if (declined === undefined) return;
    await db.$executeRaw`
      UPDATE owner SET declined = ${declined}::text[], version = version + 1
      WHERE id = (SELECT owner_id FROM callback WHERE id = ${id}::int)`;
  };

export const addLetters =
  (db: Db): CallbackStore['addLetters'] =>
  async (ids, { batch, nextOn, personId }) => {
    const rows = await db.$queryRaw<{ id: number }[]>`
      UPDATE callback SET version = version + 1, next_on = ${nextOn}::date
      WHERE id = ANY(${[...ids]}::int[]) AND state IN ('open', 'booked') RETURNING id`;
    const written = rows.map(({ id }) => id);
    await db.$executeRaw`
      INSERT INTO callback_attempt (callback_id, person_id, how, outcome, batch)
      SELECT id, ${personId}::int, 'letter', 'sent', ${batch} FROM unnest(${written}::int[]) AS id`;
    return written;
  };
