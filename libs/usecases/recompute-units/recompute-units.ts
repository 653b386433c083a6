import type { RecomputeScope } from '../../contracts';
import type { Day } from '../../day';
import { evidenceOf, inferUnit, preparedShop } from '../build-days/index';
import type { Tables } from '../ports/index';

/**
 * Works out the possible build days and the serial keys of a run of units again, by the shop's data as it is now, in
 * the caller's transaction: read, infer and write are one statement each, however many units there are. Answers the
 * units of the scope, which stay locked until the transaction ends.
 */
export async function recomputeUnits(
  tx: Tables,
  today: Day,
  scope: RecomputeScope,
  { fromUnit, toUnit }: { readonly fromUnit: number; readonly toUnit: number },
): Promise<readonly number[]> {
  const ids = await tx.units.lockTouched(scope, fromUnit, toUnit);
  const shop = await preparedShop(tx);
  const units = await tx.units.evidenced(ids);
  const built = units.map((unit) => ({
    id: unit.id,
    ...inferUnit(unit, evidenceOf(unit, unit.evidence), shop, today).columns,
  }));
  await tx.units.setBuiltMany(built);
  return ids;
}
