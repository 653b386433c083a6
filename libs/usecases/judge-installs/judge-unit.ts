import type { Clock } from '../clock';
import type { Tables } from '../ports/store';
import { loadRulebook } from '../rulebook';
import { judgeInstall } from './judge-install';
import { lookBackFrom } from './look-back';
import { planConsequences } from './plan-consequences';

/**
 * Judges everything a unit holds and writes what follows, in the caller's transaction. To be called whenever a part, a
 * fact of the unit or the state of its ticket changed. Holds the rulebook and the unit's row until the transaction ends.
 */
export const judgeUnit = (tx: Tables, clock: Clock, unitId: number): Promise<void> => judgeUnits(tx, clock, [unitId]);

/** The same for some units at once. */
export async function judgeUnits(tx: Tables, clock: Clock, unitIds: readonly number[]): Promise<void> {
  const rulebook = await loadRulebook(tx, clock);
  const choice = { unitIds };
  await tx.installs.lockUnits(choice);
  const held = await tx.installs.held(choice);
  const plan = planConsequences(
    held.map((install) => judgeInstall(install, rulebook)),
    await tx.installs.consequences(unitIds),
    {
      today: rulebook.today,
      lookBackFrom: await lookBackFrom(tx, rulebook.today),
      wholeUnits: true,
      because: 'what is known of the unit changed.',
    },
  );
  await tx.installs.apply(plan, { revision: rulebook.revision, recheckId: null });
}
