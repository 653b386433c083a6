import type { Problem, TicketView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let technician: Caller;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  technician = await shop.as('technician');
}, 300_000);

const patch = (ticket: TicketView, key: string, complaint: string, caller = technician) =>
  caller.ask<TicketView & Problem>(
    'PATCH',
    `/tickets/${ticket.id}`,
    { complaint },
    { 'if-match': `"${ticket.version}"`, 'idempotency-key': key },
  );

const changesOf = async (id: number): Promise<number> =>
  (await db.pool.query(`SELECT FROM ticket_event WHERE ticket_id = $1 AND kind = 'tag'`, [id])).rows.length;

describe('a change that comes with a key', () => {
  it('is done once and answered alike however often it comes', async () => {
    const ticket = await shop.newTicket('16060001');
    const first = await patch(ticket, 'k-1', 'Once');
    const again = await patch(ticket, 'k-1', 'Once');
    expect([first.status, again.status]).toEqual([200, 200]);
    expect(again.body).toEqual(first.body);
    expect(again.headers.get('etag')).toBe(first.headers.get('etag'));
    expect(again.headers.get('idempotent-replayed')).toBe('true');
    expect(await changesOf(ticket.id)).toBe(1);
  });

  it('keeps its refusal too, though it could be done by now', async () => {
    const ticket = await shop.newTicket('16060002');
    const stale = { ...ticket, version: ticket.version + 1 };
    expect((await patch(stale, 'k-2', 'Early')).status).toBe(412);
    await patch(ticket, 'k-2b', 'First');
    const again = await patch(stale, 'k-2', 'Early');
    expect([again.status, again.body.type]).toEqual([412, 'stale']);
  });

  it('is refused when the key stands for something else', async () => {
    const ticket = await shop.newTicket('16060003');
    await patch(ticket, 'k-3', 'One');
    const other = await patch(ticket, 'k-3', 'Two');
    expect([other.status, other.body.type]).toEqual([422, 'key-reused']);
    expect(await changesOf(ticket.id)).toBe(1);
  });

  it('is done once when it comes many times at the same moment; the rest hear 409 or the same answer', async () => {
    const ticket = await shop.newTicket('16060004');
    const answers = await Promise.all(Array.from({ length: 12 }, () => patch(ticket, 'k-4', 'Many')));
    const statuses = new Set(answers.map(({ status }) => status));
    expect([...statuses].every((status) => status === 200 || status === 409)).toBe(true);
    expect(statuses.has(200)).toBe(true);
    expect(await changesOf(ticket.id)).toBe(1);
  });

  it('is the own of the person who sent it, and forgotten after a day', async () => {
    const ticket = await shop.newTicket('16060005');
    const first = await patch(ticket, 'k-5', 'Mine');
    const others = await patch(first.body, 'k-5', 'Yours', await shop.as('counter'));
    expect(others.status).toBe(200);
    shop.clock.nowMs += 24 * 3_600_000 + 1;
    const caller = technician;
    await db.pool.query('UPDATE session SET expires_at = $1, last_seen_at = $2', [
      new Date(shop.clock.nowMs + 3_600_000),
      new Date(shop.clock.nowMs),
    ]);
    expect((await patch(others.body, 'k-5', 'A day later', caller)).status).toBe(200);
  });

  it('needs a key that can be one', async () => {
    const ticket = await shop.newTicket('16060006');
    expect((await patch(ticket, 'x'.repeat(256), 'Long')).status).toBe(400);
  });
});
