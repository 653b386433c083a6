import type { FitRuleFile } from '../../fit-rules';
import type { Db } from '../db';

/**
 * Inserts versions of rules, known from the instant their file says. A rule on a line that the shop does not have is
 * an error: it would never speak.
 */
export async function openRules(db: Db, rules: readonly FitRuleFile[], revision: number): Promise<void> {
  if (rules.length === 0) return;
  const written = await db.$executeRaw`
    INSERT INTO fit_rule (key, version, line_id, source_id, built, in_force, known, rule, opened_by)
    SELECT f.rule->>'key', (f.rule->>'version')::int, l.id, s.id,
           daterange((f.rule->'built'->>'from')::date, (f.rule->'built'->>'to')::date),
           daterange((f.rule->'inForce'->>'from')::date, (f.rule->'inForce'->>'to')::date),
           tstzrange((f.rule->'known'->>'from')::timestamptz, (f.rule->'known'->>'to')::timestamptz),
           f.rule, ${revision}::int
    FROM jsonb_array_elements(${JSON.stringify(rules)}::jsonb) AS f(rule)
    JOIN product_line l ON l.code = f.rule->>'line'
    JOIN source s ON s.key = f.rule->>'source'`;
  if (written !== rules.length)
    throw new Error(`${rules.length - written} rules name a product line or a source that is not there`);
}

/** Closes the version of each key that is known now. */
export async function closeRules(db: Db, keys: readonly string[], at: number, revision: number): Promise<void> {
  if (keys.length === 0) return;
  await db.$executeRaw`
    UPDATE fit_rule SET known = tstzrange(lower(known), ${new Date(at).toISOString()}::timestamptz), closed_by = ${revision}::int
    WHERE key = ANY(${[...keys]}::text[]) AND upper_inf(known)`;
}
