import fc from 'fast-check';
import type { OrderList, Problem, ShelfPage, StockView, TicketView } from '../../libs/contracts';
import { asProgram } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { done, pickPart, StoreOutage, takeFromShelf, type Outcome, type TicketRow } from '../../libs/usecases';
import { ok, ShelfShop, technician, EARLY } from './shelf-shop';

const db = withDatabase();
let bench: ShelfShop;

beforeAll(async () => {
  bench = await ShelfShop.open(db);
}, 300_000);
afterEach(async () => expect(await bench.untrue()).toEqual([]));

describe('the stock', () => {
  it('is counted in pieces: a bag in any writing is so many of the same part, and a revision is another part', async () => {
    const bag = await bench.receive(' 70 412b/p10 ', 2, { bin: 'C3' });
    expect(bag.item).toMatchObject({ part: { number: '70-412B' }, bin: 'C3', onHand: 20, free: 20 });
    const loose = await bench.receive('70412B', 3);
    expect(loose.sentence).toBe('Received 3 of 70-412B: 23 on hand in C3, 23 free.');
    await bench.receive('70-412A', 5, { packSize: 4 });
    const { items, kept } = await ok(bench.caller.get<ShelfPage>('/shelf'));
    expect(kept).toBe(true);
    expect(items.map(({ part, onHand }) => `${part.number} ${onHand}`)).toEqual(['70-412B 23', '70-412A 20']);
    expect((await bench.item('70 412-B')).movements.map(({ sentence }) => sentence)).toEqual([
      'Received 3.',
      'Received 20 (2 x 10).',
    ]);
  });

  it('refuses a number that no catalogue lists, and keeps nothing of it', async () => {
    const unknown = await bench.caller.ask<Problem>('POST', '/shelf/receive', { partText: '99-999', quantity: 1 });
    expect(unknown).toMatchObject({ status: 400, body: { field: 'partText' } });
    const { rows } = await db.pool.query(`SELECT 1 FROM part WHERE NOT listed`);
    expect(rows).toEqual([]);
  });

  it('is set right by a count with a reason, never below what lies on the benches', async () => {
    const [ticket] = await bench.tickets(1);
    await ok(bench.pick(ticket!, '70-412B', { quantity: 2 }));
    const few = { partText: '70-412B', pieces: 1, reason: 'two bags were empty' };
    const refused = await bench.count<Problem>(few);
    expect(refused.body.detail).toContain(`2 of 70-412B are reserved (2 for ${(await bench.ticket(ticket!)).number})`);
    const counted = await ok(bench.count({ ...few, pieces: 21 }));
    expect(counted.item).toMatchObject({ onHand: 21, reserved: 2, free: 19 });
    expect((await bench.item('70-412B')).movements[0]!.sentence).toBe('Counted, 2 fewer: two bags were empty.');
    expect((await bench.count({ ...few, reason: '' })).status).toBe(400);
    await ok(bench.act(ticket!, 'POST', '/cancel', { reason: 'owner changed his mind' }, bench.manager));
  });

  it('is not counted on what has been moved since it was looked at', async () => {
    const seen = await ok(bench.caller.get<StockView>('/shelf/stock?partText=70-412B'));
    await bench.receive('70-412B', 1);
    const body = { partText: '70-412B', pieces: seen.onHand, reason: 'monthly count' };
    const late = await bench.caller.change<Problem & { current: StockView }>(
      'POST',
      '/shelf/count',
      seen.version,
      body,
    );
    expect(late).toMatchObject({ status: 412, body: { current: { onHand: seen.onHand + 1 } } });
    expect((await bench.item('70-412B')).onHand).toBe(seen.onHand + 1);
    await ok(bench.caller.change('POST', '/shelf/count', late.body.current.version, body));
    expect((await bench.item('70-412B')).onHand).toBe(seen.onHand);
  });

  it('cannot be written past its movements, and no movement can be changed, by whoever owns the database', async () => {
    await expect(db.pool.query('UPDATE shelf_item SET on_hand = 99')).rejects.toThrow('stock changes by a movement');
    await expect(db.pool.query('UPDATE shelf_movement SET pieces = 99')).rejects.toThrow('is only ever added to');
    await expect(db.pool.query('DELETE FROM shelf_movement')).rejects.toThrow('is only ever added to');
    await expect(
      db.pool.query(`INSERT INTO shelf_item (location_id, part_id, on_hand) VALUES (2, 1, 5)`),
    ).rejects.toThrow('stock changes by a movement');
    const client = await db.pool.connect();
    await client.query('SET ROLE revright_app');
    await expect(client.query('UPDATE shelf_movement SET pieces = 99')).rejects.toThrow('permission denied');
    await expect(client.query('UPDATE shelf_item SET on_hand = 99')).rejects.toThrow('permission denied');
    client.release(true);
  });

  it('is seen at its own location alone', async () => {
    const { id } = await bench.item('70-412B');
    await db.pool.query(`UPDATE person SET location_id = 2 WHERE login = 'counter'`);
    const far = await bench.shop.as('counter');
    expect((await far.get<ShelfPage>('/shelf')).body.items).toEqual([]);
    expect((await far.get(`/shelf/items/${id}`)).status).toBe(404);
    expect((await far.change('PATCH', `/shelf/items/${id}`, 1, { bin: 'X' })).status).toBe(404);
    await db.pool.query(`UPDATE person SET location_id = 1 WHERE login = 'counter'`);
  });
});

describe('picking', () => {
  const left = (partText: string, place = 1) => ({
    side: 'left',
    places: [{ position: 'AUG-PIN', place, partText }],
  });

  it('reserves, fitting consumes, another part in the place brings it back to the bench, and returning frees it', async () => {
    const before = await bench.item('70-412B');
    const [ticket] = await bench.tickets(1);
    const stock = async () => {
      const { onHand, reserved } = await bench.item('70-412B');
      return [onHand - before.onHand, reserved];
    };
    await ok(bench.pick(ticket!, '70-412B'));
    expect(await stock()).toEqual([0, 1]);
    const shut = await bench.act<Problem>(ticket!, 'POST', '/stage', { to: 'handover' });
    expect(shut.body.missing).toContain('70-412B: record where it was fitted, or return it to the shelf.');
    await ok(bench.act(ticket!, 'PUT', '/places', left('70-412B')));
    expect(await stock()).toEqual([-1, 0]);
    await ok(bench.act(ticket!, 'PUT', '/places', left('70-412A')));
    expect(await stock()).toEqual([0, 1]);
    const { picks } = await bench.ticket(ticket!);
    await ok(bench.act(ticket!, 'POST', `/picks/${picks[0]!.id}/return`));
    expect(await stock()).toEqual([0, 0]);
    expect((await bench.item('70-412B')).movements.slice(0, 4).map(({ kind }) => kind)).toEqual([
      'return',
      'take-out',
      'fit',
      'pick',
    ]);
  });

  it('of more than is free is refused with who holds what; another source than the shelf needs none of it', async () => {
    const [first, second] = await bench.tickets(2);
    const { free } = await bench.item('70-412B');
    await ok(bench.pick(first!, '70-412B', { quantity: 2 }));
    const wanted = { quantity: free - 1, purpose: 'spare' };
    const refused = await bench.pick<Problem>(second!, '70-412B', wanted);
    expect(refused).toMatchObject({ status: 409, body: { field: 'from' } });
    expect(refused.body.detail).toContain(`2 of them are held (2 for ${(await bench.ticket(first!)).number})`);
    expect((await bench.ticket(second!)).picks).toEqual([]);
    const brought = await ok(bench.pick(second!, '70-412B', { from: 'owner' }));
    expect(brought.picks).toMatchObject([{ from: 'owner', priceMinor: 0, state: 'picked' }]);
    const bought = await ok(bench.pick(second!, '80-001', { position: 'BELT', from: 'bought' }));
    expect(bought.picks[1]).toMatchObject({ from: 'bought', priceMinor: 1_900 });
    await ok(bench.act(first!, 'POST', '/cancel', { reason: 'unit sold as it is' }, bench.manager));
    expect((await bench.item('70-412B')).free).toBe(free);
    expect((await bench.ticket(first!)).picks).toMatchObject([{ state: 'returned' }]);
  });

  it('in a shop that keeps no shelf asks nothing of it', async () => {
    await bench.keep(false);
    const [ticket] = await bench.tickets(1);
    const picked = await ok(bench.pick(ticket!, '80-002', { position: 'BELT' }));
    expect(picked.picks).toMatchObject([{ state: 'picked', from: 'shelf' }]);
    expect(picked.shelf).toEqual({ kept: false, parts: [] });
    await bench.keep(true);
    await ok(bench.act(ticket!, 'POST', `/picks/${picked.picks[0]!.id}/return`));
    expect((await ok(bench.caller.get<ShelfPage>('/shelf?q=80-002'))).items).toEqual([]);
  });

  it('shows on the ticket what is free and where it lies', async () => {
    const [ticket] = await bench.tickets(1);
    const { free } = await bench.item('70-412B');
    const { kept, parts } = (await bench.ticket(ticket!)).shelf;
    expect(kept).toBe(true);
    expect(parts.find(({ key }) => key === 'HOLM/70412B')).toMatchObject({ free, bin: 'C3' });
  });

  it('of a spare for no named position judges it where it belongs: right for one unit, barred or not its own for another', async () => {
    const [late, early] = [(await bench.tickets(1))[0]!, (await bench.tickets(1, EARLY))[0]!];
    const spare = { position: null, purpose: 'spare', quantity: 2 };
    const given = await ok(bench.pick(late, '70-412B', spare));
    expect(given.picks).toMatchObject([{ verdict: 'right', quantity: 2 }]);
    const barred = await bench.pick<Problem>(early, '70-499', { ...spare, from: 'bought' });
    expect(barred).toMatchObject({ status: 409, body: { field: 'exceptionReason' } });
    expect(barred.body.detail).toContain('the gear case breaks first');
  });
});

describe('the last pieces', () => {
  it('go to exactly as many of a thousand that reach for them at once as there are', async () => {
    const tickets = await bench.tickets(1_000);
    await bench.receive('80-001', 10);
    const part = (await bench.shop.store.catalogue.partsByKeys(['HOLM/80001']))[0]!;
    const reach = (id: number): Promise<Outcome<null>> =>
      bench.shop.store.transaction(async (tx) => {
        const ticket = { id, locationId: 1 } as TicketRow;
        const stock = await takeFromShelf(tx, ticket, part, { from: 'shelf', quantity: 1 });
        if (!stock.ok) return stock;
        const pick = { positionId: 2, partId: part.id, quantity: 1, purpose: 'fit', priceMinor: 0 } as const;
        const pickId = await tx.tickets.insertPick(
          id,
          { ...pick, exceptionReason: null, cameFrom: 'shelf', spareFor: [] },
          1,
        );
        const about = { itemId: stock.value!.id, locationId: 1, ticketId: id, pickId, personId: 1 };
        await tx.shelf.addMovement({ ...about, kind: 'pick', pieces: 0, reserved: 1 });
        return done(null);
      });
    // A thousand may wait longer for a line to the database than one is kept waiting; who is told so tries again.
    const again = (id: number): Promise<Outcome<null>> =>
      reach(id).catch((error: unknown) => {
        if (error instanceof StoreOutage) return again(id);
        throw error;
      });
    const answers = await asProgram(() => Promise.all(tickets.map(again)));
    expect(answers.filter(({ ok: taken }) => taken)).toHaveLength(10);
    expect(await bench.stock('80-001')).toBe('10 / 10');
  }, 120_000);

  it('are picked by benches the whole way, and the others are told who was quicker', async () => {
    const tickets = await bench.tickets(12);
    await bench.receive('80-002', 5);
    const clock = { now: () => bench.shop.clock.nowMs, today: () => bench.shop.clock.today };
    const ports = { store: bench.shop.store, clock };
    const belt = { position: 'BELT', partText: '80-002', quantity: 1, purpose: 'fit', from: 'shelf' } as const;
    const pick = (id: number) => pickPart(ports, technician, { ...belt, id, version: 1, exceptionReason: null });
    const answers = await asProgram(() => Promise.all(tickets.map(pick)));
    const refused = answers.flatMap((one) => (one.ok ? [] : [one.refusal.detail]));
    expect(refused).toHaveLength(7);
    expect(refused.every((sentence) => sentence.includes('5 of them are held (1 for T-'))).toBe(true);
    expect(await bench.stock('80-002')).toBe('5 / 5');
  });
});

describe('two benches', () => {
  const step = fc.oneof(
    {
      weight: 3,
      arbitrary: fc.record({ kind: fc.constant('pick' as const), quantity: fc.integer({ min: 1, max: 2 }) }),
    },
    { weight: 2, arbitrary: fc.record({ kind: fc.constantFrom('return' as const, 'fit' as const, 'other' as const) }) },
    {
      weight: 1,
      arbitrary: fc.record({ kind: fc.constant('receive' as const), quantity: fc.integer({ min: 1, max: 3 }) }),
    },
    {
      weight: 1,
      arbitrary: fc.record({ kind: fc.constant('count' as const), pieces: fc.integer({ min: 0, max: 6 }) }),
    },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('cancel' as const) }) },
  );
  type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

  async function doIt(ticket: number, one: Step): Promise<void> {
    const now = await bench.ticket(ticket);
    if (now.closedAt !== null) return;
    const open = now.picks.find(({ state }) => state === 'picked');
    const leave = (partText: string) =>
      bench.act(ticket, 'PUT', '/places', { side: 'left', places: [{ position: 'AUG-PIN', place: 1, partText }] });
    if (one.kind === 'pick') await bench.pick(ticket, '70-412A', { quantity: one.quantity });
    else if (one.kind === 'return' && open) await bench.act(ticket, 'POST', `/picks/${open.id}/return`);
    else if (one.kind === 'fit') await leave('70-412A');
    else if (one.kind === 'other') await leave('70-412B');
    else if (one.kind === 'receive') await bench.receive('70-412A', one.quantity);
    else if (one.kind === 'count')
      await bench.count({ partText: '70-412A', pieces: one.pieces, reason: 'monthly count' });
    else if (one.kind === 'cancel')
      await bench.act(ticket, 'POST', '/cancel', { reason: 'not worth it' }, bench.manager);
  }

  it('in any order leave a stock that is the sum of its movements, with as much reserved as lies on the benches', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 7 }), fc.array(step, { maxLength: 7 }), async (left, right) => {
        const [one, other] = await bench.tickets(2, EARLY);
        const work = async (ticket: number, steps: readonly Step[]) => {
          for (const each of steps) await doIt(ticket, each);
        };
        await Promise.all([work(one!, left), work(other!, right)]);
        expect(await bench.untrue()).toEqual([]);
        const { rows } = await db.pool.query('SELECT 1 FROM shelf_item WHERE on_hand < 0 OR reserved > on_hand');
        expect(rows).toEqual([]);
      }),
      { numRuns: 6 },
    );
  }, 180_000);
});

describe('what is missing', () => {
  it('is waited for, ordered in whole packs by supplier, expected, and wakes who waited first when it comes in', async () => {
    const [first, second] = await bench.tickets(2);
    await db.pool.query(
      `INSERT INTO part (key, maker_id, number, canonical, name) VALUES ('HOLM/90100', 1, '90-100', '90100', 'Grip')`,
    );
    const wait = (id: number, quantity: number) =>
      ok(bench.act(id, 'POST', '/waits', { partText: '90-100', quantity, position: null }));
    await wait(first!, 2);
    const waiting = await wait(second!, 1);
    expect(waiting.waits).toMatchObject([{ part: { number: '90-100' }, pieces: 1, wokenAt: null }]);
    const { id, version } = await bench.item('90-100');
    const set = { supplier: 'Holmgard depot', packSize: 4, reorderPoint: 2, orderQuantity: 5 };
    await ok(bench.manager.change('PATCH', `/shelf/items/${id}`, version, set));
    expect((await bench.manager.change('PATCH', `/shelf/items/${id}`, version, set)).status).toBe(412);
    const { lines } = await ok(bench.caller.get<OrderList>('/shelf/orders'));
    expect(lines.find(({ itemId }) => itemId === id)).toMatchObject({
      waited: 3,
      order: 8,
      supplier: 'Holmgard depot',
    });
    const csv = await fetch(`${bench.shop.api.url}/api/shelf/orders/list.csv`, {
      headers: { cookie: bench.caller.cookie },
    });
    expect(await csv.text()).toContain('Holmgard depot,90-100,Grip,8,4,2,0,0,3\r\n');
    const ordered = { expectedOn: '2026-11-27', lines: [{ itemId: id, pieces: 8 }] };
    const placed = await ok(bench.manager.ask<OrderList>('POST', '/shelf/orders', ordered));
    expect(placed.lines.map(({ itemId }) => itemId)).not.toContain(id);
    expect(placed.open).toMatchObject([{ pieces: 8, received: 0, expectedOn: '2026-11-27', state: 'open' }]);
    const two = await bench.receive('90-100', 2);
    expect(two.woken).toEqual([(await bench.ticket(first!)).number]);
    const board = await bench.caller.get<{ stages: { tickets: TicketView[] }[] }>('/board');
    const cards = board.body.stages.flatMap(({ tickets }) => tickets as unknown as { id: number; waits: unknown }[]);
    expect(cards.find((card) => card.id === first)!.waits).toEqual({ parts: ['90-100'], here: true });
    expect(cards.find((card) => card.id === second)!.waits).toEqual({ parts: ['90-100'], here: false });
    expect((await bench.ticket(first!)).history.at(-1)!.sentence).toBe('Came in: 2 x 90-100.');
    const rest = await bench.receive('90-100/P6', 1, { orderId: placed.open[0]!.id });
    expect(rest.woken).toEqual([(await bench.ticket(second!)).number]);
    expect((await ok(bench.caller.get<OrderList>('/shelf/orders'))).open).toEqual([]);
    const picked = await ok(bench.pick(first!, '90-100', { position: null, purpose: 'spare', quantity: 2 }));
    expect(picked.waits).toEqual([]);
  });
});
