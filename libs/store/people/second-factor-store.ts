import type { SecondFactorStore, SignInStepStore } from '../../usecases';
import type { Db } from '../db';

export function secondFactorStore(db: Db): SecondFactorStore {
  return {
    async find(personId) {
      const rows = await db.$queryRaw<{ sealed: string; on: boolean }[]>`
        SELECT sealed, on_since IS NOT NULL AS "on" FROM second_factor WHERE person_id = ${personId}::int`;
      return rows[0] ?? null;
    },
    sealed: () => db.$queryRaw<{ personId: number; sealed: string }[]>`
      SELECT person_id AS "personId", sealed FROM second_factor ORDER BY person_id`,
    async reseal(personId, was, sealed) {
      const count = await db.$executeRaw`
        UPDATE second_factor SET sealed = ${sealed} WHERE person_id = ${personId}::int AND sealed = ${was}`;
      return count === 1;
    },
    async begin(personId, sealed) {
      const begun = await db.$executeRaw`
        INSERT INTO second_factor (person_id, sealed) VALUES (${personId}::int, ${sealed})
        ON CONFLICT (person_id) DO UPDATE SET sealed = EXCLUDED.sealed WHERE second_factor.on_since IS NULL`;
      return begun === 1;
    },
    async turnOn(personId, step, at) {
      await db.$executeRaw`
        UPDATE second_factor SET on_since = ${new Date(at)}, last_step = ${step}::int
        WHERE person_id = ${personId}::int AND on_since IS NULL`;
    },
    async takeStep(personId, step) {
      const taken = await db.$executeRaw`
        UPDATE second_factor SET last_step = ${step}::int
        WHERE person_id = ${personId}::int AND on_since IS NOT NULL AND last_step < ${step}::int`;
      return taken === 1;
    },
    async remove(personId) {
      await db.$executeRaw`DELETE FROM recovery_code WHERE person_id = ${personId}::int`;
      return (await db.$executeRaw`DELETE FROM second_factor WHERE person_id = ${personId}::int`) === 1;
    },
    async setRecovery(personId, hashes) {
      await db.$executeRaw`DELETE FROM recovery_code WHERE person_id = ${personId}::int`;
      await db.$executeRaw`
        INSERT INTO recovery_code (person_id, code_hash) SELECT ${personId}::int, unnest(${[...hashes]}::text[])`;
    },
    async takeRecovery(personId, hash) {
      const taken = await db.$executeRaw`
        DELETE FROM recovery_code WHERE person_id = ${personId}::int AND code_hash = ${hash}`;
      return taken === 1;
    },
    async recoveryLeft(personId) {
      const rows = await db.$queryRaw<{ left: number }[]>`
        SELECT count(*)::int AS "left" FROM recovery_code WHERE person_id = ${personId}::int`;
      return rows[0]!.left;
    },
  };
}

export function signInStepStore(db: Db): SignInStepStore {
  return {
    async insert({ tokenHash, personId, expiresAt }) {
      await db.$executeRaw`
        INSERT INTO sign_in_step (token_hash, person_id, expires_at)
        VALUES (${tokenHash}, ${personId}::int, ${new Date(expiresAt)})`;
    },
    async find(tokenHash, now) {
      const rows = await db.$queryRaw<{ id: number }[]>`
        SELECT person_id AS id FROM sign_in_step WHERE token_hash = ${tokenHash} AND expires_at > ${new Date(now)}`;
      return rows[0]?.id ?? null;
    },
    async remove(tokenHash) {
      await db.$executeRaw`DELETE FROM sign_in_step WHERE token_hash = ${tokenHash}`;
    },
    async removeExpired(before) {
      await db.$executeRaw`DELETE FROM sign_in_step WHERE expires_at < ${new Date(before)}`;
    },
  };
}
