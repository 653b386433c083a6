import { formatDay, parseDay } from '../../day';
import { rulesTurningBetween } from '../../fit-rules';
import { startRecheck } from '../publish-bulletin/start-recheck';
import { IN_FORCE_DAY } from '../ports/session-store';
import { loadRulebook, recheckScopeOf } from '../rulebook';
import type { Ports } from '../run';

/**
 * Starts the recheck of rules that have come into force, or gone out of it, since it was last asked: a bulletin dated
 * ahead reaches its day. To be called often; it does nothing twice. Answers the recheck's id, or null.
 */
export async function startDatedBulletins({ store, clock }: Ports): Promise<number | null> {
  const today = clock.today();
  if ((await store.settings.read(IN_FORCE_DAY)) === formatDay(today)) return null;
  return store.transaction(async (tx) => {
    await tx.rulebook.alone();
    const last = await tx.settings.read(IN_FORCE_DAY);
    const since = typeof last === 'string' ? parseDay(last) : null;
    if (since !== null && since >= today) return null;
    await tx.settings.write(IN_FORCE_DAY, formatDay(today), null);
    if (since === null) return null;
    const { rulebook, now } = await loadRulebook(tx, clock);
    const turning = rulesTurningBetween(rulebook, since, today, now);
    if (turning.length === 0) return null;
    const sources = new Set(turning.map((rule) => rule.source));
    const list = sources.size === 1 ? await tx.bulletins.list() : [];
    const sourceId = list.find((one) => sources.has(one.key))?.id ?? null;
    const { revision } = await tx.rulebook.addRevision({ cause: 'in-force', sourceId, personId: null });
    return startRecheck(tx, {
      cause: 'in-force',
      sourceId,
      revision,
      scope: recheckScopeOf(turning),
      requestedBy: null,
    });
  });
}
