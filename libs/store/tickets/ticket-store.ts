import type { EarlierTicketRow, PlaceRecordRow, SpareRow, TicketStore, WholeTicketStore } from '../../usecases';
import type { Db } from '../db';
import { readBoard, readOwnersOnBoard } from './read-board';
import { addEvents, insertPick, setPickStates, sparesOf } from './picks-and-events';
import { putRecords, recordsOf } from './place-records';
import { earlierOf, readPage, readWhole } from './read-whole';
import { searchTickets } from './search-tickets';
import { changeTicket, insertTicket, readTicketRow } from './ticket-row';

export function ticketStore(db: Db): TicketStore & WholeTicketStore {
  return {
    insert: insertTicket(db),
    byId: (id) => readTicketRow(db, id),
    change: changeTicket(db),
    addEvents: addEvents(db),
    whole: (id) => readWhole(db, id),
    page: (id, most) => readPage(db, id, most),
    records: (ticketId) => db.$queryRaw<PlaceRecordRow[]>(recordsOf(ticketId)),
    putRecords: putRecords(db),
    insertPick: insertPick(db),
    setPickStates: setPickStates(db),
    spares: (unitId) => db.$queryRaw<SpareRow[]>(sparesOf(unitId)),
    earlier: (unitId, ticketId) => db.$queryRaw<EarlierTicketRow[]>(earlierOf(unitId, ticketId)),
    board: (filter) => readBoard(db, filter),
    ownersOnBoard: (locationId) => readOwnersOnBoard(db, locationId),
    search: (terms, locationId, most) => searchTickets(db, terms, locationId, most),
  };
}
