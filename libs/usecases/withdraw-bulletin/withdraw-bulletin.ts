import { ruleFromFile, type FitRuleFile } from '../../fit-rules';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { StoredRule } from '../ports/rulebook-store';
import type { Tables } from '../ports/store';
import { recheckScopeOf } from '../rulebook';
import type { Ports } from '../run';
import { startRecheck } from '../publish-bulletin/start-recheck';

export interface WithdrawInput {
  readonly id: number;
  readonly version: number;
  readonly reason: string;
}

/**
 * Takes a published bulletin back: its rules are no longer known, and rules it ended or corrected stand again as they
 * did, unless a later act has changed them since. The recheck that follows closes callbacks no longer needed.
 */
export async function withdrawBulletin(
  { store }: Ports,
  actor: Actor,
  { id, version, reason }: WithdrawInput,
): Promise<Outcome<{ readonly recheckId: number }>> {
  return store.transaction(async (tx) => {
    await tx.rulebook.alone();
    const bulletin = await tx.bulletins.lock(id);
    if (!bulletin) return refused('not-found', 'There is no bulletin with this number.');
    if (bulletin.state !== 'published')
      return refused('already-done', `Bulletin ${bulletin.number} is ${bulletin.state}, not published.`, {
        current: bulletin,
      });
    if (bulletin.version !== version)
      return refused('stale', `Bulletin ${bulletin.number} was changed meanwhile.`, { current: bulletin });
    const undo = await planUndo(tx, id);
    const { revision, at } = await tx.rulebook.addRevision({ cause: 'withdraw', sourceId: id, personId: actor.id });
    await tx.rulebook.close(
      undo.closes.map(({ rule }) => rule.key),
      at,
      revision,
    );
    const opens = undo.restores.map((rule) => ({ ...rule, known: { from: new Date(at).toISOString(), to: null } }));
    await tx.rulebook.open(opens, revision);
    await tx.bulletins.markWithdrawn(id, at, reason);
    const changed = [...undo.closes.map(({ rule }) => rule), ...opens].map(ruleFromFile);
    const recheckId = await startRecheck(tx, {
      cause: 'withdraw',
      sourceId: id,
      revision,
      scope: recheckScopeOf(changed),
      requestedBy: actor.id,
    });
    await tx.live.tell('bulletin', id);
    return done({ recheckId });
  });
}

interface Undo {
  /** Versions known now that are to be closed. */
  readonly closes: readonly StoredRule[];
  /** What stands again, as the next version of its rule. */
  readonly restores: readonly FitRuleFile[];
}

async function planUndo(tx: Tables, sourceId: number): Promise<Undo> {
  const own = (await tx.rulebook.versionsOfSource(sourceId)).filter(isKnown);
  const publishedBy = await tx.rulebook.revisionThatPublished(sourceId);
  const displaced = publishedBy === null ? [] : await tx.rulebook.versionsClosedBy(publishedBy);
  const histories = byKey(await tx.rulebook.versionsOf(displaced.map(({ rule }) => rule.key)));
  const closes = new Map(own.map((stored) => [stored.rule.key, stored]));
  const restores: FitRuleFile[] = [];
  for (const old of displaced) {
    const history = histories.get(old.rule.key)!;
    const last = history[history.length - 1]!;
    const untouched = last.closedBy === publishedBy || (last.openedBy === publishedBy && isKnown(last));
    if (!untouched) continue;
    if (isKnown(last)) closes.set(last.rule.key, last);
    restores.push({ ...old.rule, version: last.rule.version + 1 });
  }
  return { closes: [...closes.values()], restores };
}

const isKnown = (stored: StoredRule): boolean => stored.closedBy === null;

function byKey(versions: readonly StoredRule[]): ReadonlyMap<string, StoredRule[]> {
  const histories = new Map<string, StoredRule[]>();
  for (const one of versions) {
    const list = histories.get(one.rule.key);
    if (list) list.push(one);
    else histories.set(one.rule.key, [one]);
  }
  return histories;
}
