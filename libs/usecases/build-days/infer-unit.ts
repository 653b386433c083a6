import {
  inferBuildDates,
  possibleKeys,
  readSerial,
  type BuildDateAnswer,
  type Evidence,
  type PreparedShop,
} from '../../build-date';
import type { Day } from '../../day';
import type { BuiltColumns } from '../ports/index';
import type { EvidencedUnit } from './unit-evidence';

/** What a unit's evidence says, whole for the page and in columns for judging. */
export interface InferredUnit {
  readonly answer: BuildDateAnswer;
  readonly columns: BuiltColumns;
}

/**
 * The possible build days of a unit, and its serial's scheme and key where one reading of it is left (the scheme alone
 * where only the key is open). A serial that a person has set aside has neither: its characters are not trusted.
 */
export function inferUnit(
  unit: EvidencedUnit,
  evidence: readonly Evidence[],
  shop: PreparedShop,
  today: Day,
): InferredUnit {
  const answer = inferBuildDates(evidence, shop, today);
  const key = serialKeyOf(unit, evidence, answer, shop, today);
  return {
    answer,
    columns: { built: answer.days, serialScheme: key?.scheme ?? null, serialKey: key?.key ?? null },
  };
}

function serialKeyOf(
  { serial, line, maker }: EvidencedUnit,
  evidence: readonly Evidence[],
  answer: BuildDateAnswer,
  shop: PreparedShop,
  today: Day,
) {
  if (serial === null || !line || !maker) return null;
  const piece = evidence.find((one) => one.kind === 'serial-scheme' && one.serial === serial);
  if (piece?.setAside) return null;
  const keys = possibleKeys(readSerial(serial, { maker: maker.code, line: line.code }, shop, today), answer.days);
  const [first] = keys;
  if (!first || keys.some(({ scheme }) => scheme !== first.scheme)) return null;
  return { scheme: first.scheme, key: keys.length === 1 ? first.key : null };
}
