import type { BulkPart, BulkStore, KnownSupersession, NewSupersession } from '../../usecases';
import type { Db } from '../db';

type Actions = Pick<
  BulkStore,
  | 'saveMakers'
  | 'numbersOf'
  | 'saveParts'
  | 'addUnlisted'
  | 'supersessionsFrom'
  | 'saveSupersessions'
  | 'supersessions'
  | 'pageOfParts'
>;

export function catalogueActions(db: Db): Actions {
  return {
    async saveMakers(rows) {
      await db.$executeRaw`
        INSERT INTO maker (code, name, number_rules)
        SELECT r.code, r.name, r."numberRules"
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r(code text, name text, "numberRules" jsonb)
        ON CONFLICT (code) DO UPDATE SET name = EXCLUDED.name, number_rules = EXCLUDED.number_rules`;
    },
    numbersOf: (makerCode) => db.$queryRaw<{ number: string; canonical: string }[]>`
      SELECT p.number, p.canonical FROM part p JOIN maker m ON m.id = p.maker_id WHERE m.code = ${makerCode}`,
    async saveParts(rows) {
      await db.$executeRaw`
        INSERT INTO part (key, maker_id, number, canonical, name, fastener, price_minor)
        SELECT r.key, m.id, r.number, r.canonical, r.name, nullif(r.fastener, 'null'::jsonb), r."priceMinor"
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb)
          AS r(key text, maker text, number text, canonical text, name text, fastener jsonb, "priceMinor" int)
        JOIN maker m ON m.code = r.maker
        ON CONFLICT (key) DO UPDATE SET number = EXCLUDED.number, name = EXCLUDED.name, listed = TRUE,
          fastener = EXCLUDED.fastener, price_minor = EXCLUDED.price_minor`;
      await saveTradeNumbers(db, rows);
    },
    async addUnlisted(rows) {
      if (rows.length === 0) return;
      await db.$executeRaw`
        INSERT INTO part (key, maker_id, number, canonical, name, listed)
        SELECT r.key, m.id, r.number, r.canonical, 'Not in the catalogue', false
        FROM jsonb_to_recordset(${JSON.stringify(rows)}::jsonb) AS r(key text, maker text, number text, canonical text)
        JOIN maker m ON m.code = r.maker
        ON CONFLICT (key) DO NOTHING`;
    },
    supersessionsFrom: (keys) => db.$queryRaw<KnownSupersession[]>`
      SELECT id, from_key AS "from", to_key AS "to", direction FROM supersession
      WHERE from_key = ANY(${[...keys]}::text[]) AND known_to IS NULL ORDER BY id`,
    async saveSupersessions(closes, opens, at) {
      const instant = new Date(at).toISOString();
      await db.$executeRaw`
        UPDATE supersession SET known_to = ${instant}::timestamptz WHERE id = ANY(${[...closes]}::int[])`;
      await db.$executeRaw`
        INSERT INTO supersession (from_key, to_key, direction, known_from)
        SELECT r."from", r."to", r.direction, ${instant}::timestamptz
        FROM jsonb_to_recordset(${JSON.stringify(opens)}::jsonb) AS r("from" text, "to" text, direction text)`;
    },
    supersessions: () => db.$queryRaw<NewSupersession[]>`
      SELECT from_key AS "from", to_key AS "to", direction FROM supersession WHERE known_to IS NULL ORDER BY from_key, id`,
    pageOfParts: (afterId, limit) => db.$queryRaw<(BulkPart & { id: number })[]>`
      SELECT p.id, p.key, m.code AS maker, p.number, p.canonical, p.name, p.fastener, p.price_minor AS "priceMinor",
             coalesce((SELECT jsonb_agg(jsonb_build_object('gtin', t.gtin, 'pack', t.pack) ORDER BY t.gtin)
                       FROM part_trade_number t WHERE t.part_id = p.id), '[]'::jsonb) AS "tradeNumbers"
      FROM part p JOIN maker m ON m.id = p.maker_id WHERE p.listed AND p.id > ${afterId}::int ORDER BY p.id
      LIMIT ${limit}::int`,
  };
}

/** The trade numbers of parts that name theirs: those take the place of the ones before. */
async function saveTradeNumbers(db: Db, rows: readonly BulkPart[]): Promise<void> {
  const naming = rows.filter(({ tradeNumbers }) => tradeNumbers !== undefined);
  if (naming.length === 0) return;
  const wanted = JSON.stringify(
    naming.flatMap(({ key, tradeNumbers }) => (tradeNumbers ?? []).map((one) => ({ key, ...one }))),
  );
  await db.$executeRaw`
    DELETE FROM part_trade_number t USING part p
    WHERE p.id = t.part_id AND p.key = ANY(${naming.map(({ key }) => key)}::text[])
      AND NOT EXISTS (SELECT FROM jsonb_to_recordset(${wanted}::jsonb) AS w(key text, gtin text)
                      WHERE w.key = p.key AND w.gtin = t.gtin)`;
  await db.$executeRaw`
    INSERT INTO part_trade_number (gtin, part_id, pack)
    SELECT w.gtin, p.id, w.pack FROM jsonb_to_recordset(${wanted}::jsonb) AS w(key text, gtin text, pack int)
    JOIN part p ON p.key = w.key
    ON CONFLICT (gtin) DO UPDATE SET part_id = EXCLUDED.part_id, pack = EXCLUDED.pack
      WHERE (part_trade_number.part_id, part_trade_number.pack) <> (EXCLUDED.part_id, EXCLUDED.pack)`;
}
