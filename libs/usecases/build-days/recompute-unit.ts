import type { Clock } from '../clock';
import { judgeUnit } from '../judge-installs';
import type { Tables } from '../ports/index';
import { inferUnit } from './infer-unit';
import { preparedShop } from './prepared-shop';
import { evidenceOf } from './unit-evidence';

/**
 * Works out a unit's possible build days again and judges all it holds by them, in the caller's transaction. To be
 * called after anything changed that the days rest on.
 */
export async function recomputeUnit(tx: Tables, clock: Clock, unitId: number): Promise<void> {
  const unit = await tx.units.byId(unitId);
  if (!unit) throw new Error(`unit ${unitId} vanished in the middle of a change`);
  const shop = await preparedShop(tx);
  const evidence = evidenceOf(unit, await tx.units.evidence(unitId));
  await tx.units.setBuilt(unitId, inferUnit(unit, evidence, shop, clock.today()).columns);
  await judgeUnit(tx, clock, unitId);
}
