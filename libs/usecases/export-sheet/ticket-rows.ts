import { TicketParts } from '../import-sheet/kinds/ticket-parts';
import type { BulkTicket, Tables } from '../ports/index';
import type { Values } from './catalogue-rows';

const AT_ONCE = 500;

/** Closed tickets of the location (null: of every one), each recorded part on a row. */
export async function* ticketRows(store: Tables, locationId: number | null): AsyncGenerator<readonly Values[]> {
  const parts = await TicketParts.of(store);
  for (let after = 0; ;) {
    const page = await store.bulk.pageOfTickets(after, AT_ONCE, locationId);
    if (page.length === 0) return;
    await parts.load(page.flatMap(({ records }) => records.map(({ partText }) => partText)));
    yield page.flatMap((ticket) => rowsOf(ticket, parts));
    after = page[page.length - 1]!.id;
  }
}

function rowsOf(ticket: BulkTicket, parts: TicketParts): Values[] {
  const { number, opened, closed, unitId, line, serial, complaint, cancelled, records } = ticket;
  const head = { number, opened, closed, unitNumber: unitId, line, serial, complaint, cancelled };
  if (records.length === 0) return [head];
  return records.map(({ part, partText, candidates, ...record }) => ({
    ...head,
    position: record.position,
    place: record.place,
    side: record.side,
    part: part === null ? null : textFor(part, partText, line ?? '', parts),
    condition: record.condition,
    fittedOn: record.fittedOn,
    leftOut: record.leftOut,
    canBe: candidates,
    told: record.told,
  }));
}

/** The number as it was read where it still reads as this part, else the part's key. */
function textFor(key: string, text: string | null, line: string, parts: TicketParts): string {
  if (text === null) return key;
  const read = parts.read(text, line);
  return read.ok && read.part.key === key ? text : key;
}
