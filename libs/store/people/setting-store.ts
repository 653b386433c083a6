import type { SettingStore } from '../../usecases';
import type { Db } from '../db';
import { Together } from '../together';

/** Any fixed number of its own: held by whoever changes settings made on a version. */
const SETTING_LOCK = 4_780_021;

export function settingStore(db: Db): SettingStore {
  const versionOf = async (keys: readonly string[]): Promise<number> => {
    const rows = await db.$queryRaw<{ version: number }[]>`
      SELECT 1 + coalesce(sum(version), 0)::int AS version FROM setting WHERE key = ANY(${[...keys]}::text[])`;
    return rows[0]!.version;
  };
  const values = new Together((keys: readonly string[]) => readValues(db, keys));
  return {
    versionOf,
    async claim(keys, version) {
      await db.$executeRaw`SELECT pg_advisory_xact_lock(${SETTING_LOCK}::bigint)`;
      return (await versionOf(keys)) === version;
    },
    // A page needs several, here and there; those that are asked for at once are read together.
    read: async (key) => (await values.of(key)) ?? null,
    async write(key, value, personId) {
      await db.$executeRaw`
        INSERT INTO setting (key, value, updated_by) VALUES (${key}, ${JSON.stringify(value)}::jsonb, ${personId}::int)
        ON CONFLICT (key) DO UPDATE
          SET value = EXCLUDED.value, updated_by = EXCLUDED.updated_by, updated_at = now(), version = setting.version + 1`;
    },
  };
}

async function readValues(db: Db, keys: readonly string[]): Promise<ReadonlyMap<string, unknown>> {
  const rows = await db.$queryRaw<{ key: string; value: unknown }[]>`
    SELECT key, value FROM setting WHERE key = ANY(${[...keys]}::text[])`;
  return new Map(rows.map(({ key, value }) => [key, value]));
}
