import { usualStanding, type RulebookFile } from '../../fit-rules';
import { STANDING } from '../../usecases';
import type { Db } from '../db';
import { knownFile } from './known-sql';

/**
 * The rulebook: every version of every rule, or only those that a revision after `since` opened or closed; and, whole,
 * the papers behind them, supersessions and the shop's standing.
 */
export async function loadRulebookFile(db: Db, since = 0): Promise<RulebookFile> {
  const rules = await db.$queryRaw<{ one: RulebookFile['rules'][number] }[]>`
    SELECT r.rule || ${knownFile('r')} AS one FROM fit_rule r
    WHERE r.opened_by > ${since}::int OR r.closed_by > ${since}::int ORDER BY r.key, r.version`;
  const sources = await db.$queryRaw<RulebookFile['sources']>`
    SELECT key, kind, publisher, number, title, issued::text, effective::text, received::text
    FROM source WHERE state <> 'draft' ORDER BY key`;
  const supersessions = await db.$queryRaw<RulebookFile['supersessions']>`
    SELECT from_key AS "from", to_key AS "to", direction,
           jsonb_build_object(
             'from', to_char(known_from AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"'),
             'to', to_char(known_to AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')) AS known
    FROM supersession ORDER BY id`;
  const standing = await db.$queryRaw<{ value: RulebookFile['standing'] }[]>`
    SELECT value FROM setting WHERE key = ${STANDING}`;
  return { rules: rules.map(({ one }) => one), sources, supersessions, standing: standing[0]?.value ?? usualStanding };
}
