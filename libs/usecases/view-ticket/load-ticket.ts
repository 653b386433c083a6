import { prepareShop, type Evidence, type PreparedShop } from '../../build-date';
import { day } from '../../day';
import type { Judgement, Ruling, UnitFacts } from '../../fit-rules';
import { evidenceOf, factsOfUnit, inferUnit, type InferredUnit } from '../build-days/index';
import type {
  EvidenceRow,
  FlagRow,
  PartRow,
  PickRow,
  PlaceRecordRow,
  PositionRow,
  Tables,
  TicketRow,
  UnitRow,
} from '../ports/index';
import type { Clock } from '../clock';
import { partKeysOf, type Names } from '../rule-on-unit/index';
import { loadRulebook, type LoadedRulebook } from '../rulebook';

/** A ticket with everything its gates and its page rest on, judged by the rulebook of now. */
export interface WholeTicket extends Names {
  readonly ticket: TicketRow;
  readonly unit: UnitRow;
  readonly facts: UnitFacts | null;
  readonly evidenceRows: readonly EvidenceRow[];
  readonly evidence: readonly Evidence[];
  readonly inferred: InferredUnit;
  readonly shop: PreparedShop;
  /** In the order the shop looks at them; none while the line is not known. */
  readonly positionList: readonly PositionRow[];
  readonly records: readonly PlaceRecordRow[];
  readonly picks: readonly PickRow[];
  readonly flags: readonly FlagRow[];
  readonly partsById: ReadonlyMap<number, PartRow>;
  /** One per position, in the same order. */
  readonly rulings: readonly Ruling[];
  readonly today: number;
}

/**
 * Reads a ticket whole, with a fixed number of statements however many places it has. Null when there is none at the
 * location. `alsoParts` are ids of further parts whose names are wanted.
 */
export async function loadTicket(
  tables: Tables,
  clock: Clock,
  id: number,
  locationId: number,
  alsoParts: readonly number[] = [],
): Promise<WholeTicket | null> {
  const ticket = await tables.tickets.byId(id);
  if (!ticket || ticket.locationId !== locationId) return null;
  const [unit, records, picks, flags, evidenceRows, shopData, rulebook] = await allOf(tables, clock, ticket);
  const positionList = unit.line ? await tables.catalogue.positionsOf(unit.line.id) : [];
  const facts = factsOfUnit(unit);
  const rulings = facts ? positionList.map(({ code }) => rulebook.judge.ruling(facts, code)) : [];
  const parts = await readParts(tables, [...partIdsOf(records, picks), ...alsoParts], partKeysOf(rulings));
  const shop = prepareShop(shopData);
  const evidence = evidenceOf(unit, evidenceRows);
  return {
    ticket,
    unit,
    facts,
    evidenceRows,
    evidence,
    inferred: inferUnit(unit, evidence, shop, clock.today()),
    shop,
    positionList,
    positions: new Map(positionList.map((position) => [position.code, position])),
    records,
    picks,
    flags,
    ...parts,
    rulings,
    rulebook,
    today: clock.today(),
  };
}

async function allOf(tables: Tables, clock: Clock, ticket: TicketRow) {
  const [unit, ...rest] = await Promise.all([
    tables.units.byId(ticket.unitId),
    tables.tickets.records(ticket.id),
    tables.tickets.picks(ticket.id),
    tables.flags.ofTicket(ticket.id),
    tables.units.evidence(ticket.unitId),
    tables.catalogue.shopData(),
    loadRulebook(tables, clock),
  ]);
  if (!unit) throw new Error(`ticket ${ticket.number} has no unit`);
  return [unit, ...rest] as const;
}

function partIdsOf(records: readonly PlaceRecordRow[], picks: readonly PickRow[]): number[] {
  const recorded = records.flatMap(({ partId, candidates }) => (partId === null ? candidates : [partId, ...candidates]));
  return [...recorded, ...picks.map(({ partId }) => partId)];
}

/** Parts by id and by key: those recorded or picked, and those the rulings name. */
async function readParts(tables: Tables, ids: readonly number[], keys: readonly string[]) {
  const [byId, byKey] = await Promise.all([
    tables.catalogue.partsByIds([...new Set(ids)]),
    tables.catalogue.partsByKeys(keys),
  ]);
  return {
    partsById: new Map(byId.map((part) => [part.id, part])),
    partsByKey: new Map([...byId, ...byKey].map((part) => [part.key, part])),
  };
}

/** Judges what one record says is in its place; null where it says nothing that can be judged. */
export function judgeRecord(whole: WholeTicket, record: PlaceRecordRow): Judgement | null {
  const position = positionById(whole, record.positionId);
  if (!whole.facts || !position || record.leftOutWhy !== null || record.condition === 'missing') return null;
  const ids = record.partId === null ? record.candidates : [record.partId];
  return whole.rulebook.judge.judge({
    unit: whole.facts,
    position: position.code,
    parts: ids.map((id) => whole.partsById.get(id)!.key),
    fittedOn: record.fittedOn === null ? null : day(record.fittedOn),
  });
}

/** Judges a part that is to be fitted today. */
export function judgePart(whole: WholeTicket, position: string, partKey: string): Judgement | null {
  if (!whole.facts) return null;
  const { facts: unit, today: fittedOn } = whole;
  return whole.rulebook.judge.judge({ unit, position, parts: [partKey], fittedOn });
}

export function positionById({ positionList }: WholeTicket, id: number): PositionRow | undefined {
  return positionList.find((position) => position.id === id);
}
