import { ShopDataSchema, type ShopData } from '../../build-date';
import type { Db } from '../db';

/** The data as it was last read, by the database's own text of it: schemes change rarely and are read all the time. */
let last: { readonly text: string; readonly data: ShopData } | null = null;

/**
 * Serial schemes and standard editions, checked on their way out: a bad row is a bug, not a bad answer. Answers the
 * same object for as long as nothing of it has changed.
 */
export async function readShopData(db: Db): Promise<ShopData> {
  const [row] = await db.$queryRaw<{ text: string }[]>`
    SELECT json_build_object(
      'serialSchemes', coalesce((SELECT json_agg(scheme ORDER BY id) FROM serial_scheme), '[]'::json),
      'standardEditions', coalesce((SELECT json_agg(data ORDER BY id) FROM standard_edition), '[]'::json)
    )::text AS text`;
  const { text } = row!;
  if (last?.text !== text) last = { text, data: ShopDataSchema.parse(JSON.parse(text)) };
  return last.data;
}
