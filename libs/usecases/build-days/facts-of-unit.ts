import type { UnitFacts } from '../../fit-rules';
import type { UnitRow } from '../ports/index';

/** What the fit rules are asked about; null while the product line is not known, for then no rule can be named. */
export function factsOfUnit(
  unit: Pick<UnitRow, 'line' | 'model' | 'options' | 'serialScheme' | 'serialKey' | 'built'>,
): UnitFacts | null {
  if (!unit.line) return null;
  const { serialScheme: scheme, serialKey: key } = unit;
  return {
    line: unit.line.code,
    model: unit.model?.number ?? null,
    options: unit.options,
    serial: scheme === null ? null : { scheme, key },
    built: unit.built,
  };
}
