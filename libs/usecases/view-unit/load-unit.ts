import type { Evidence, PreparedShop } from '../../build-date';
import type { Day } from '../../day';
import type { Ruling, UnitFacts } from '../../fit-rules';
import { evidenceOf, factsOfUnit, inferUnit, type InferredUnit } from '../build-days/index';
import type { Clock } from '../clock';
import type { EvidenceRow, PositionRow, Tables, UnitRow } from '../ports/index';
import type { LoadedRulebook } from '../rulebook';
import { papersOf, type Papers } from './papers';

/** A unit with its evidence, what that says, and the ruling for each of its positions. */
export interface WholeUnit {
  readonly unit: UnitRow;
  /** Null while the product line is not known. */
  readonly facts: UnitFacts | null;
  readonly evidenceRows: readonly EvidenceRow[];
  readonly evidence: readonly Evidence[];
  readonly inferred: InferredUnit;
  readonly shop: PreparedShop;
  /** In the order the shop looks at them; none while the line is not known. */
  readonly positionList: readonly PositionRow[];
  readonly positions: ReadonlyMap<string, PositionRow>;
  /** One per position, in the same order. */
  readonly rulings: readonly Ruling[];
  readonly rulebook: LoadedRulebook;
  readonly today: Day;
}

/** Reads a unit whole, by the papers as they stand unless some are given; null when there is none. */
export async function loadUnit(tables: Tables, clock: Clock, id: number, papers?: Papers): Promise<WholeUnit | null> {
  const [unit, evidence, known] = await Promise.all([
    tables.units.byId(id),
    tables.units.evidence(id),
    papers ?? papersOf(tables, clock),
  ]);
  return unit && wholeUnit({ unit, evidence }, known, clock.today());
}

/** The same of what was read of the unit already. */
export async function wholeUnit(
  { unit, evidence: evidenceRows }: { readonly unit: UnitRow; readonly evidence: readonly EvidenceRow[] },
  { shop, rulebook, positionsOf }: Papers,
  today: Day,
): Promise<WholeUnit> {
  const positionList = unit.line ? await positionsOf(unit.line) : [];
  const facts = factsOfUnit(unit);
  const evidence = evidenceOf(unit, evidenceRows);
  return {
    unit,
    facts,
    evidenceRows,
    evidence,
    inferred: inferUnit(unit, evidence, shop, today),
    shop,
    positionList,
    positions: new Map(positionList.map((position) => [position.code, position])),
    rulings: facts ? positionList.map(({ code }) => rulebook.judge.ruling(facts, code)) : [],
    rulebook,
    today,
  };
}
