import type { MoneySettings } from '../../contracts';
import { day, type Day } from '../../day';
import type { Judgement } from '../../fit-rules';
import type { Clock } from '../clock';
import { moneySettingsFrom } from '../estimate-work/money-settings';
import type {
  FlagRow,
  PartRow,
  PickRow,
  PlaceRecordRow,
  PositionRow,
  Tables,
  TicketRow,
  WholeTicketRows,
} from '../ports/index';
import { partKeysOf, type Names } from '../rule-on-unit/index';
import { papersOf, wholeUnit, type Papers, type WholeUnit } from '../view-unit/index';

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
 * Reads a ticket whole, by the papers as they stand unless some are given; with a fixed number of statements however
 * many places it has. Null when there is none at the location.
 */
export async function loadTicket(
  tables: Tables,
  clock: Clock,
  id: number,
  locationId: number,
  papers?: Papers,
): Promise<WholeTicket | null> {
  const [known, rows] = await Promise.all([papers ?? papersOf(tables, clock), tables.tickets.whole(id)]);
  if (!rows || rows.ticket.locationId !== locationId) return null;
  return wholeTicket(rows, known, clock.today());
}

/** The same of what was read of the ticket already. `alsoParts` are further parts whose names are wanted. */
export async function wholeTicket(
  rows: WholeTicketRows,
  papers: Papers,
  today: Day,
  alsoParts: readonly number[] = [],
): Promise<WholeTicket> {
  const { ticket, records, picks, flags, settings } = rows;
  const unit = await wholeUnit(rows, papers, today);
  const ids = [...partIdsOf(records, picks), ...alsoParts];
  const parts = await readParts(papers, ids, partKeysOf(unit.rulings));
  return { ...unit, ticket, records, picks, flags, money: moneySettingsFrom(settings), ...parts };
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
