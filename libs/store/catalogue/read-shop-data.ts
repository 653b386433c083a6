import { ShopDataSchema, type ShopData } from '../../build-date';
import type { Db } from '../db';

/** Serial schemes and standard editions, checked on their way out: a bad row is a bug, not a bad answer. */
export async function readShopData(db: Db): Promise<ShopData> {
  const [row] = await db.$queryRaw<{ schemes: unknown; editions: unknown }[]>`
    SELECT coalesce((SELECT json_agg(scheme ORDER BY id) FROM serial_scheme), '[]'::json) AS schemes,
           coalesce((SELECT json_agg(data ORDER BY id) FROM standard_edition), '[]'::json) AS editions`;
  return ShopDataSchema.parse({ serialSchemes: row!.schemes, standardEditions: row!.editions });
}
