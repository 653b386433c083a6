import type { DaySet } from '../../day';
import type { UnitFacts } from '../../fit-rules';

/** What is known of a unit, as far as fit rules ask for it. */
export interface KnownOfUnit {
  /** Null while it is not known. */
  readonly line: { readonly id: number; readonly code: string } | null;
  readonly model: { readonly number: string } | null;
  /** An option that is not named is not known. */
  readonly options: Readonly<Record<string, boolean>>;
  /** How its serial stands in its maker's scheme; null where that is not settled. */
  readonly serialScheme: string | null;
  readonly serialKey: string | null;
  readonly built: DaySet;
}

/** What the fit rules are asked about; null while the product line is not known, for then no rule can be named. */
export function factsOfUnit(unit: KnownOfUnit): UnitFacts | null {
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
