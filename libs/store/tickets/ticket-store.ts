import type { EarlierTicketRow, TicketStore } from '../../usecases';
import type { Db } from '../db';
import { readBoard, readOwnersOnBoard } from './read-board';
import { addEvents, insertPick, readEvents, readPicks, readSpares, setPickStates } from './picks-and-events';
import { putRecords, readRecords, readRecordsBefore } from './place-records';
import { searchTickets } from './search-tickets';
import { changeTicket, insertTicket, readTicketRow } from './ticket-row';

export function ticketStore(db: Db): TicketStore {
  return {
    insert: insertTicket(db),
    byId: (id) => readTicketRow(db, id),
    change: changeTicket(db),
    addEvents: addEvents(db),
    events: (ticketId) => readEvents(db, ticketId),
    records: (ticketId) => readRecords(db, ticketId),
    recordsBefore: (unitId, ticketId) => readRecordsBefore(db, unitId, ticketId),
    putRecords: putRecords(db),
    picks: (ticketId) => readPicks(db, ticketId),
    insertPick: insertPick(db),
    setPickStates: setPickStates(db),
    spares: (unitId) => readSpares(db, unitId),
    earlier: (unitId, ticketId) => db.$queryRaw<EarlierTicketRow[]>`
      SELECT id, number, closed_at::date::text AS "closedOn", complaint
      FROM ticket WHERE unit_id = ${unitId} AND id <> ${ticketId} ORDER BY opened_at DESC, id DESC`,
    board: (filter) => readBoard(db, filter),
    ownersOnBoard: (locationId) => readOwnersOnBoard(db, locationId),
    search: (terms, locationId, most) => searchTickets(db, terms, locationId, most),
  };
}
