import type { MoneySettings } from '../../contracts';
import { day } from '../../day';
import type { Judgement } from '../../fit-rules';
import type { Clock } from '../clock';
import { moneySettingsOf } from '../estimate-work/money-settings';
import type { FlagRow, PartRow, PickRow, PlaceRecordRow, PositionRow, Tables, TicketRow } from '../ports/index';
import { partKeysOf, type Names } from '../rule-on-unit/index';
import { loadUnit, type WholeUnit, type Papers } from '../view-unit/index';

/** A ticket with everything its gates and its page rest on, judged by the rulebook of now. */
export interface WholeTicket extends WholeUnit, Names {
  readonly ticket: TicketRow;
  readonly records: readonly PlaceRecordRow[];
  readonly picks: readonly PickRow[];
  readonly flags: readonly FlagRow[];
  readonly partsById: ReadonlyMap<number, PartRow>;
  readonly money: MoneySettings;
}

/**
 * Reads a ticket whole, with a fixed number of statements however many places it has. Null when there is none at the
 * location.
 */
export async function loadTicket(
  tables: Tables,
  clock: Clock,
  id: number,
  locationId: number,
): Promise<WholeTicket | null> {
  const ticket = await tables.tickets.byId(id);
  if (!ticket || ticket.locationId !== locationId) return null;
  return loadAround(tables, clock, ticket);
}

/** The same for a ticket whose own columns were read already. `alsoParts` are further parts whose names are wanted; without `papers` they are read now. */
export async function loadAround(
  tables: Tables,
  clock: Clock,
  ticket: TicketRow,
  alsoParts: readonly number[] = [],
  papers?: Papers,
): Promise<WholeTicket> {
  const { id } = ticket;
  const [whole, records, picks, flags, money] = await Promise.all([
    loadUnit(tables, clock, ticket.unitId, papers),
    tables.tickets.records(id),
    tables.tickets.picks(id),
    tables.flags.ofTicket(id),
    moneySettingsOf(tables),
  ]);
  if (!whole) throw new Error(`ticket ${ticket.number} has no unit`);
  const parts = await readParts(
    papers ?? tables.catalogue,
    [...partIdsOf(records, picks), ...alsoParts],
    partKeysOf(whole.rulings),
  );
  return { ...whole, ticket, records, picks, flags, money, ...parts };
}

function partIdsOf(records: readonly PlaceRecordRow[], picks: readonly PickRow[]): number[] {
  const recorded = records.flatMap(({ partId, candidates }) =>
    partId === null ? candidates : [partId, ...candidates],
  );
  return [...recorded, ...picks.map(({ partId }) => partId)];
}

/** Parts by id and by key: those recorded or picked, and those the rulings name. */
async function readParts(
  from: Pick<Papers, 'partsByIds' | 'partsByKeys'>,
  ids: readonly number[],
  keys: readonly string[],
) {
  const [byId, byKey] = await Promise.all([from.partsByIds([...new Set(ids)]), from.partsByKeys(keys)]);
  return {
    partsById: new Map(byId.map((part) => [part.id, part])),
    partsByKey: new Map([...byId, ...byKey].map((part) => [part.key, part])),
  };
}

/** Judges what one record says is in its place; null where it says nothing that can be judged. */
export function judgeRecord(whole: WholeTicket, record: PlaceRecordRow): Judgement | null {
  const position = positionById(whole, record.positionId);
  if (!whole.facts || !position || record.leftOutWhy !== null || record.condition === 'missing') return null;
  if (record.partId === null && record.marks === null && record.candidates.length === 0) return null;
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

export function positionById({ positionList }: Pick<WholeUnit, 'positionList'>, id: number): PositionRow | undefined {
  return positionList.find((position) => position.id === id);
}
