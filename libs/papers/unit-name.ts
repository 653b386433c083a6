import type { UnitView } from '../contracts';

/** Maker, line and model number of a unit, as far as they are known; a sentence's worth where nothing is. */
export function unitName(unit: Pick<UnitView, 'makerName' | 'lineName' | 'modelNumber'>): string {
  return [unit.makerName, unit.lineName, unit.modelNumber].filter(Boolean).join(' ') || 'Unit not identified yet';
}
