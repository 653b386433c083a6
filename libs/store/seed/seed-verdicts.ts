import type { DemoShop } from '../../demo';
import { judgeInstall, loadRulebook, monthsBefore, planConsequences } from '../../usecases';
import type { Db } from '../db';
import { tablesOn } from '../tables';
import { refreshMany } from '../units/refresh-installs';
import { seedPastFlags } from './seed-past-flags';

/** What every unit holds, and the first judgement on it with all that follows, by the path that judges every day. */
export async function seedVerdicts(db: Db, shop: DemoShop, unitIds: readonly number[]): Promise<void> {
  const tables = tablesOn(db);
  const rulebook = await loadRulebook(tables, { now: () => Date.now(), today: () => shop.today });
  await seedPastFlags(db, shop, unitIds, rulebook);
  await refreshMany(db, unitIds, 'UTC');
  const held = await tables.installs.held({ unitIds });
  const plan = planConsequences(
    held.map((install) => judgeInstall(install, rulebook)),
    { flags: [], reasons: [], notes: [] },
    {
      today: shop.today,
      lookBackFrom: monthsBefore(shop.today, shop.settings.lookBackMonths),
      wholeUnits: true,
      because: 'the shop was opened.',
    },
  );
  await tables.installs.apply(plan, { revision: rulebook.revision, recheckId: null });
}
