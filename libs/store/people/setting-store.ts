import type { SettingStore } from '../../usecases';
import type { Db } from '../db';

export function settingStore(db: Db): SettingStore {
  return {
    async read(key) {
      const rows = await db.$queryRaw<{ value: unknown }[]>`SELECT value FROM setting WHERE key = ${key}`;
      return rows[0]?.value ?? null;
    },
    async write(key, value, personId) {
      await db.$executeRaw`
        INSERT INTO setting (key, value, updated_by) VALUES (${key}, ${JSON.stringify(value)}::jsonb, ${personId}::int)
        ON CONFLICT (key) DO UPDATE
          SET value = EXCLUDED.value, updated_by = EXCLUDED.updated_by, updated_at = now(), version = setting.version + 1`;
    },
  };
}
