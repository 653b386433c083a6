import type { UnitIdentity, UnitView } from '../../../../../libs/contracts';

/** What identifies a unit, without what the shop worked out from it. */
export function identityOf(unit: UnitView): UnitIdentity {
  const { lineCode, modelNumber, serial, serialAbsent, options, plate } = unit;
  return { lineCode, modelNumber, serial, serialAbsent, options, plate };
}
