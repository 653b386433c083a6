import { formatDay, type Day } from '../../day';
import type { DemoShop } from '../../demo';
import { SAFETY_POINTS } from '../../ticket';
import type { Db } from '../db';
import { ESTIMATE_COLUMNS, estimateRows, lastRevision } from './estimate-rows';
import { takeIds } from '../take-ids';
import { insertRows } from './insert-rows';
import type { CatalogueIds } from './seed-catalogue';
import type { HouseIds } from './seed-house';
import type { UnitIds } from './seed-units';

export type SeededIds = { readonly house: HouseIds; readonly catalogue: CatalogueIds; readonly units: UnitIds };
type DemoTicket = DemoShop['tickets'][number];

/** Tickets with their records, picks, estimates and history. */
export async function seedTickets(db: Db, shop: DemoShop, ids: SeededIds): Promise<void> {
  const ticketIds = await takeIds(db, 'ticket', shop.tickets.length);
  const with_ = <T>(rows: (ticket: DemoTicket, id: number, line: string) => readonly T[]): T[] =>
    shop.tickets.flatMap((ticket, at) => rows(ticket, ticketIds[at]!, shop.units[ticket.unit]!.line));
  await insertRows(
    db,
    'ticket',
    TICKET_COLUMNS,
    with_((ticket, id) => [ticketRow(ticket, id, ids)]),
  );
  await insertRows(
    db,
    'place_record',
    RECORD_COLUMNS,
    with_((ticket, id, line) => recordRows(ticket, id, line, ids)),
  );
  await insertRows(
    db,
    'pick',
    PICK_COLUMNS,
    with_((ticket, id, line) => pickRows(ticket, id, line, ids)),
  );
  await insertRows(
    db,
    'estimate',
    ESTIMATE_COLUMNS,
    with_((ticket, id) => estimateRows(ticket, id, shop, ids)),
  );
  await insertRows(
    db,
    'ticket_event',
    EVENT_COLUMNS,
    with_((ticket, id) => eventRows(ticket, id, ids)),
  );
}

const TICKET_COLUMNS = {
  id: 'int',
  number: 'text',
  location_id: 'int',
  unit_id: 'int',
  owner_id: 'int',
  bench_id: 'int',
  bench_rank: 'bigint',
  stage: 'text',
  complaint: 'text',
  promised_on: 'date',
  hold_reason: 'text',
  cancel_reason: 'text',
  opened_at: 'timestamptz',
  closed_at: 'timestamptz',
  handed_over: 'boolean',
  labour_minutes: 'int',
  labour_minor: 'int',
  labour_lines: 'jsonb',
  authorisation: 'jsonb',
  safety_checks: 'text[]',
};

function ticketRow(ticket: DemoTicket, id: number, { house, units }: SeededIds) {
  return {
    id,
    number: ticket.number,
    location_id: house.location.of(ticket.location),
    unit_id: units.unit[ticket.unit],
    owner_id: units.owner[ticket.owner],
    bench_id: ticket.bench === null ? null : house.bench.of(ticket.bench),
    // In the order they were opened in, with room between them.
    bench_rank: ticket.bench === null ? null : id * 1_048_576,
    stage: ticket.stage,
    complaint: ticket.complaint,
    promised_on: dayText(ticket.promisedOn),
    hold_reason: ticket.holdReason,
    cancel_reason: ticket.cancelReason,
    opened_at: instantText(ticket.openedAt),
    closed_at: ticket.closedAt === null ? null : instantText(ticket.closedAt),
    handed_over: ticket.handedOver,
    labour_minutes: ticket.labourMinutes,
    labour_minor: ticket.labourMinor,
    labour_lines: labourLines(ticket),
    authorisation: ticket.authorisation && { ...ticket.authorisation, revision: lastRevision(ticket) },
    safety_checks: ticket.safe ? SAFETY_POINTS.map((point) => point.id) : [],
  };
}

function labourLines({ labourMinutes: minutes, labourMinor: minor }: DemoTicket) {
  return minutes === 0 ? [] : [{ kind: 'labour', what: 'Work at the bench', minutes, minor }];
}

const RECORD_COLUMNS = {
  ticket_id: 'int',
  unit_id: 'int',
  position_id: 'int',
  place: 'int',
  side: 'text',
  part_id: 'int',
  part_text: 'text',
  pack: 'int',
  marks: 'jsonb',
  candidates: 'int[]',
  condition: 'text',
  fitted_on: 'date',
  left_out_why: 'text',
  recorded_at: 'timestamptz',
  recorded_by: 'int',
};

function recordRows(ticket: DemoTicket, ticketId: number, line: string, { house, catalogue, units }: SeededIds) {
  return ticket.records.map((record) => ({
    ticket_id: ticketId,
    unit_id: units.unit[ticket.unit],
    position_id: catalogue.position.of(`${line} ${record.position}`),
    place: record.place,
    side: record.side,
    part_id: record.part === null ? null : catalogue.part.of(record.part),
    part_text: record.partText,
    pack: record.pack,
    marks: record.marks,
    candidates: record.candidates.map((key) => catalogue.part.of(key)),
    condition: record.condition,
    fitted_on: dayText(record.fittedOn),
    left_out_why: record.leftOutWhy,
    recorded_at: instantText(record.at),
    recorded_by: house.person.of(ticket.technician),
  }));
}

const PICK_COLUMNS = {
  ticket_id: 'int',
  position_id: 'int',
  part_id: 'int',
  quantity: 'int',
  purpose: 'text',
  state: 'text',
  price_minor: 'int',
  picked_at: 'timestamptz',
  picked_by: 'int',
};

function pickRows(ticket: DemoTicket, ticketId: number, line: string, { house, catalogue }: SeededIds) {
  return ticket.picks.map(({ position, part, quantity, purpose, state, priceMinor, at }) => ({
    ticket_id: ticketId,
    position_id: position === null ? null : catalogue.position.of(`${line} ${position}`),
    part_id: catalogue.part.of(part),
    quantity,
    purpose,
    state,
    price_minor: priceMinor * quantity,
    picked_at: instantText(at),
    picked_by: house.person.of(ticket.technician),
  }));
}

const EVENT_COLUMNS = { ticket_id: 'int', at: 'timestamptz', person_id: 'int', kind: 'text', data: 'jsonb' };

function eventRows(ticket: DemoTicket, ticketId: number, { house }: SeededIds) {
  return ticket.events.map(({ at, person, kind, data }) => ({
    ticket_id: ticketId,
    at: instantText(at),
    person_id: house.person.of(person),
    kind,
    data,
  }));
}

const dayText = (day: Day | null): string | null => (day === null ? null : formatDay(day));
const instantText = (instant: number): string => new Date(instant).toISOString();
