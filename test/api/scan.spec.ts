import type { Part, Problem, Scanned, ShelfMoved, TicketView, UnitVisit } from '../../libs/contracts';
import { unitTagCode } from '../../libs/part-number';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let counter: Caller;
let ticket: TicketView;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  counter = await shop.as('counter');
  ticket = await shop.newTicket('18020001');
}, 300_000);

const scan = async (text: string) => (await counter.get<Scanned>(`/scan?text=${encodeURIComponent(text)}`)).body.found;
const FNC1 = '\u001d';
const PIN = { key: 'HOLM/70412B', number: '70-412B', name: 'Auger pin, late' };

describe('the one field for every scan', () => {
  it('leads from the tag of a ticket to the ticket', async () => {
    expect(await scan(ticket.number)).toEqual({ kind: 'ticket', id: ticket.id });
    expect(await scan(`${ticket.number}\r`)).toEqual({ kind: 'ticket', id: ticket.id });
  });

  it('leads from the tag of a unit to the unit, and from a misread one nowhere', async () => {
    const code = unitTagCode(ticket.unit.id);
    expect(await scan(code)).toEqual({ kind: 'unit', id: ticket.unit.id });
    const wrong = `${code.slice(0, -1)}${(Number(code.slice(-1)) + 1) % 10}`;
    expect(await scan(wrong)).toEqual({
      kind: 'unknown',
      sentence: `The check digit of ${wrong} is wrong: scan it again.`,
    });
    expect(await scan(unitTagCode(999_999))).toMatchObject({ kind: 'unknown' });
  });

  it.each([
    ['the plain number', '70-412B', 1, null],
    ['the number as somebody types it', '70 412b', 1, null],
    ['a pack', '70-412B/P10', 10, null],
    ['a GS1 element string', `]C10106291041500213${''}24070-412B${FNC1}10L7`, 1, 'L7'],
    ['one with the customer’s number alone', `]d224170412B`, 1, null],
    ['one as it is printed', '(01)06291041500213(10)L7(21)0099(240)70-412B', 1, 'L7'],
  ])('leads from a bag to its part: %s', async (_what, text, pack, batch) => {
    expect(await scan(text)).toEqual({ kind: 'part', part: PIN, pack, batch });
  });

  it.each([
    ['(01)06291041500214(240)70-412B', 'The check digit of 06291041500214 is wrong: scan it again, or type it.'],
    [
      '(01)06291041500213',
      "No part is known here by the trade number 6291041500213; scan or type the maker's number on the bag.",
    ],
    ['(10)L7', "The code names no maker's number; scan or type the number printed on the bag."],
    ['(240)99-NONE', 'The bag names the part 99-NONE, which is in no catalogue here.'],
    [
      '6291041500213',
      "No part is known here by the trade number 6291041500213; scan or type the maker's number on the bag.",
    ],
  ])('says plainly that %s leads nowhere', async (text, sentence) => {
    expect(await scan(text)).toEqual({ kind: 'unknown', sentence });
  });

  it('leads from the trade number of a bag to its part, once somebody has written it down', async () => {
    const [pin] = (await counter.get<Part[]>('/parts?q=70-412B')).body;
    const path = `/parts/${pin!.id}/trade-numbers`;
    const [bare, ten] = ['6291041500213', '16291041500210'];
    const wrong = await counter.ask<Problem>('POST', path, { number: '6291041500214' });
    expect([wrong.status, wrong.body.field]).toEqual([400, 'number']);
    expect(wrong.body.detail).toBe(
      '“6291041500214” cannot be kept: its last digit should be 3 by the digits before it; read it again.',
    );
    await counter.ask('POST', path, { number: '629 1041 500213' });
    const kept = await counter.ask<Part>('POST', path, { number: ten, pack: 10 });
    expect(kept.body.tradeNumbers).toEqual([
      { number: bare, pack: 1 },
      { number: ten, pack: 10 },
    ]);
    const [belt] = (await counter.get<Part[]>('/parts?q=80-001')).body;
    const taken = await counter.ask<Problem>('POST', `/parts/${belt!.id}/trade-numbers`, { number: bare });
    expect([taken.status, taken.body.detail]).toEqual([409, `${bare} is the number of 70-412B of Holmgard already.`]);

    expect(await scan(bare)).toEqual({ kind: 'part', part: PIN, pack: 1, batch: null });
    expect(await scan(`]C101${ten}10L7`)).toEqual({ kind: 'part', part: PIN, pack: 10, batch: 'L7' });
    // What the bag says in letters comes first.
    expect(await scan(`(01)0${bare}(240)80-001`)).toMatchObject({ part: { number: '80-001' } });
    expect((await counter.get<Part[]>(`/parts?q=${ten}`)).body.map(({ number }) => number)).toEqual(['70-412B']);
    const moved = await counter.ask<ShelfMoved>('POST', '/shelf/receive', { partText: `(01)${ten}`, quantity: 2 });
    expect([moved.status, moved.body.item?.onHand]).toEqual([200, 20]);

    expect((await counter.ask('DELETE', `${path}/${bare}`)).status).toBe(200);
    expect((await counter.ask('DELETE', `${path}/${bare}`)).status).toBe(404);
    expect(await scan(bare)).toMatchObject({ kind: 'unknown' });
    const { rows } = await db.pool.query(`SELECT act FROM audit_entry WHERE noun = 'part_trade_number' ORDER BY id`);
    expect(rows.map(({ act }: { act: string }) => act)).toEqual(['insert', 'insert', 'delete']);
  });

  it('leaves words to the search', async () => {
    for (const text of ['Ole Brand', '555 0101', 'pin']) expect(await scan(text)).toEqual({ kind: 'text' });
  });

  it('shows nobody a unit of another location', async () => {
    const code = unitTagCode(ticket.unit.id);
    await db.pool.query(`UPDATE person SET location_id = 2 WHERE login = 'counter'`);
    expect(await scan(code)).toMatchObject({ kind: 'unknown' });
    expect((await counter.get(`/units/${ticket.unit.id}`)).status).toBe(404);
    await db.pool.query(`UPDATE person SET location_id = 1 WHERE login = 'counter'`);
  });
});

describe('a unit that comes in again', () => {
  it('is greeted with its history, what was noted for this visit, an open call, and its evidence', async () => {
    const { id } = ticket.unit;
    await db.pool.query(
      `INSERT INTO unit_note (unit_id, source_id, position_id, place, detail)
       VALUES ($1, 1, 1, 1, '{"sentence":"Change the pin at the next service."}')`,
      [id],
    );
    await db.pool.query(`INSERT INTO callback (unit_id, owner_id, urgent) VALUES ($1, $2, true)`, [
      id,
      ticket.owner.id,
    ]);
    const { status, body } = await counter.get<UnitVisit>(`/units/${id}`);
    expect(status).toBe(200);
    expect(body).toMatchObject({
      code: unitTagCode(id),
      here: true,
      openTicket: { id: ticket.id, number: ticket.number },
      earlierTickets: [],
      notes: [{ sentence: 'Change the pin at the next service.', source: 'PL-7' }],
      callback: { urgent: true },
    });
    expect(body.unit.buildDates.evidence.map(({ kind }) => kind)).toContain('first-seen');

    expect((await counter.get<UnitVisit>(`/units/${id}`)).body.settledNotes).toEqual([]);
    await (await shop.as('manager')).change('POST', `/tickets/${ticket.id}/cancel`, ticket.version, { reason: 'sold' });
    const later = (await counter.get<UnitVisit>(`/units/${id}`)).body;
    expect(later.openTicket).toBeNull();
    expect(later.earlierTickets).toMatchObject([{ id: ticket.id, number: ticket.number }]);
  });
});
