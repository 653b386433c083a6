import type { Evidence, PreparedShop } from '../../build-date';
import type { Day } from '../../day';
import type { Ruling, UnitFacts } from '../../fit-rules';
import { evidenceOf, factsOfUnit, inferUnit, preparedShop, type InferredUnit } from '../build-days/index';
import type { Clock } from '../clock';
import type { EvidenceRow, PositionRow, Tables, UnitRow } from '../ports/index';
import { loadRulebook, type LoadedRulebook } from '../rulebook';

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

/** Reads a unit whole; null when there is none. */
export async function loadUnit(tables: Tables, clock: Clock, id: number): Promise<WholeUnit | null> {
  const [unit, evidenceRows, shop, rulebook] = await Promise.all([
    tables.units.byId(id),
    tables.units.evidence(id),
    preparedShop(tables),
    loadRulebook(tables, clock),
  ]);
  if (!unit) return null;
  const positionList = unit.line ? await tables.catalogue.positionsOf(unit.line.id) : [];
  const facts = factsOfUnit(unit);
  const evidence = evidenceOf(unit, evidenceRows);
  const today = clock.today();
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
