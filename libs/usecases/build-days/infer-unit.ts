import {
  inferBuildDates,
  serialOfUnit,
  type BuildDateAnswer,
  type Evidence,
  type PreparedShop,
} from '../../build-date';
import type { Day } from '../../day';
import type { BuiltColumns } from '../ports/index';
import { datedUnit, type EvidencedUnit } from './unit-evidence';

/** What a unit's evidence says, whole for the page and in columns for judging. */
export interface InferredUnit {
  readonly answer: BuildDateAnswer;
  readonly columns: BuiltColumns;
}

/** The possible build days of a unit, and its serial's scheme and key as far as they are settled. */
export function inferUnit(
  unit: EvidencedUnit,
  evidence: readonly Evidence[],
  shop: PreparedShop,
  today: Day,
): InferredUnit {
  const answer = inferBuildDates(evidence, shop, today);
  const serial = serialOfUnit(datedUnit(unit), evidence, answer.days, shop, today);
  return {
    answer,
    columns: { built: answer.days, serialScheme: serial?.scheme ?? null, serialKey: serial?.key ?? null },
  };
}
