import type { BulletinDetail, BulletinRow } from '../../contracts';
import { ruleFromFile, type FitRule, type FitRuleFile } from '../../fit-rules';
import { done, refused, type Outcome } from '../outcome';
import type { BulletinRecord } from '../ports/bulletin-store';
import type { Store } from '../ports/store';
import { loadRulebook } from '../rulebook';
import type { Ports } from '../run';
import { recheckView } from '../view-recheck/view-recheck';
import { ruleView } from './rule-view';

/** Every paper of the shop, newest first. */
export async function listBulletins({ store }: Ports): Promise<readonly BulletinRow[]> {
  return store.bulletins.list();
}

/** A bulletin with the rules it opens and ends, in words, and how far its recheck has come. */
export async function viewBulletin({ store, clock }: Ports, id: number): Promise<Outcome<BulletinDetail>> {
  const bulletin = await store.bulletins.find(id);
  if (!bulletin) return refused('not-found', 'There is no bulletin with this number.');
  const ends = bulletin.draft?.ends ?? [];
  const endedRules = await newestOf(
    store,
    ends.map(({ rule }) => rule),
  );
  const recheck = await store.rechecks.ofSource(id);
  const { naming } = await loadRulebook(store, clock);
  return done({
    ...bulletin,
    opens: (await openedRules(store, bulletin)).map((rule) => ruleView(rule, naming)),
    ends: ends.map(({ rule: key, on }) => {
      const rule = endedRules.get(key);
      return { rule: rule ? ruleView(rule, naming) : null, key, on };
    }),
    recheck: recheck && recheckView(recheck),
  });
}

async function openedRules(store: Store, { id, state, draft }: BulletinRecord): Promise<readonly FitRule[]> {
  if (state === 'draft') return ((draft?.opens ?? []) as unknown as readonly FitRuleFile[]).map(ruleFromFile);
  const versions = await store.rulebook.versionsOfSource(id);
  return [...new Map(versions.map(({ rule }) => [rule.key, ruleFromFile(rule)])).values()];
}

async function newestOf(store: Store, keys: readonly string[]): Promise<ReadonlyMap<string, FitRule>> {
  const versions = keys.length === 0 ? [] : await store.rulebook.versionsOf(keys);
  return new Map(versions.map(({ rule }) => [rule.key, ruleFromFile(rule)]));
}
