import type { DeviceStore, TryStore } from '../../usecases';
import type { Db } from '../db';

/** Counting and looking are one statement, so that tries made at the same moment are counted one after the other. */
export function tryStore(db: Db): TryStore {
  const waitOf = async (key: string, now: number): Promise<number> => {
    const rows = await db.$queryRaw<{ until: Date }[]>`SELECT until FROM sign_in_try WHERE key = ${key}`;
    return Math.max(1, (rows[0]?.until.getTime() ?? 0) - now);
  };
  return {
    async slowed(key, now, { free, firstMs, longestMs }) {
      const counted = await db.$executeRaw`
        INSERT INTO sign_in_try AS t (key, tries, last_at, until)
        VALUES (${key}, 1, ${new Date(now)}, ${new Date(now)})
        ON CONFLICT (key) DO UPDATE SET tries = t.tries + 1, last_at = EXCLUDED.last_at,
          until = EXCLUDED.last_at + CASE WHEN t.tries + 1 < ${free}::int THEN interval '0' ELSE
            least(${firstMs}::int * power(2, least(t.tries + 1 - ${free}::int, 30)), ${longestMs}::int)
            * interval '1 millisecond' END
        WHERE t.until <= EXCLUDED.last_at`;
      return counted === 1 ? 0 : waitOf(key, now);
    },
    async windowed(key, now, { most, windowMs }) {
      const end = new Date(now + windowMs);
      const counted = await db.$executeRaw`
        INSERT INTO sign_in_try AS t (key, tries, last_at, until) VALUES (${key}, 1, ${new Date(now)}, ${end})
        ON CONFLICT (key) DO UPDATE SET last_at = EXCLUDED.last_at,
          tries = CASE WHEN t.until <= EXCLUDED.last_at THEN 1 ELSE t.tries + 1 END,
          until = CASE WHEN t.until <= EXCLUDED.last_at THEN EXCLUDED.until ELSE t.until END
        WHERE t.tries < ${most}::int OR t.until <= EXCLUDED.last_at`;
      return counted === 1 ? 0 : waitOf(key, now);
    },
    async forget(key) {
      await db.$executeRaw`DELETE FROM sign_in_try WHERE key = ${key}`;
    },
    async forgetOlder(before) {
      await db.$executeRaw`DELETE FROM sign_in_try WHERE last_at < ${new Date(before)}`;
    },
  };
}

export function deviceStore(db: Db): DeviceStore {
  return {
    async isKnown(tokenHash, login) {
      const rows = await db.$queryRaw<unknown[]>`
        SELECT 1 FROM known_device d JOIN person p ON p.id = d.person_id
        WHERE d.token_hash = ${tokenHash} AND p.login = ${login}`;
      return rows.length === 1;
    },
    async renew({ oldHash, newHash, personId, at }) {
      await db.$executeRaw`UPDATE known_device SET token_hash = ${newHash} WHERE token_hash = ${oldHash}`;
      await db.$executeRaw`
        INSERT INTO known_device (token_hash, person_id, seen_at)
        VALUES (${newHash}, ${personId}::int, ${new Date(at)})
        ON CONFLICT (token_hash, person_id) DO UPDATE SET seen_at = EXCLUDED.seen_at`;
    },
    async forgetAll(personId) {
      await db.$executeRaw`DELETE FROM known_device WHERE person_id = ${personId}::int`;
    },
    async removeOlder(before) {
      await db.$executeRaw`DELETE FROM known_device WHERE seen_at < ${new Date(before)}`;
    },
  };
}
