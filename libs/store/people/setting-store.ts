import type { SettingStore } from '../../usecases';
import type { Db } from '../db';

export function settingStore(db: Db): SettingStore {
  return {
    async read(key) {
      const rows = await db.$queryRaw<{ value: unknown }[]>`SELECT value FROM setting WHERE key = ${key}`;
      return rows[0]?.value ?? null;
    },
  };
}
