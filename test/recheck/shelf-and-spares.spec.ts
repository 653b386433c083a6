import type { CallbackPage, Problem, Published, ShelfPull, WhatIf } from '../../libs/contracts';
import { asProgram } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { judgeChunk, planChunks } from '../../libs/usecases';
import { rule } from '../api/api-shop';
import { LATE, ok, ShelfShop } from '../api/shelf-shop';

const db = withDatabase();
const OWN = ['2019-03-01', '2019-04-01'] as const;
let shop: ShelfShop;
let holding: readonly number[];
let gone: number;
let bulletin: { id: number; version: number };

/** Judges every chunk of a recheck, as a worker would. */
async function judged(recheckId: number): Promise<void> {
  const { store, clock } = shop.shop;
  const ports = { store, clock: { now: () => Date.now(), today: () => clock.today } };
  await asProgram(() => planChunks(ports, { recheckId }));
  const { rows } = await db.pool.query<{ n: number }>('SELECT n FROM recheck_chunk WHERE recheck_id = $1', [recheckId]);
  for (const { n } of rows) await asProgram(() => judgeChunk(ports, { recheckId, n }));
}

/** A unit that goes out with 70-412B in one place and two more as spares, picked before the bulletin's day. */
async function goesOut(id: number): Promise<void> {
  await ok(shop.pick(id, '70-412B'));
  await ok(shop.pick(id, '70-412B', { position: null, purpose: 'spare', quantity: 2 }));
  await db.pool.query(`UPDATE pick SET picked_at = '2026-05-04' WHERE ticket_id = $1 AND purpose = 'spare'`, [id]);
  const left = { side: 'left', places: [{ position: 'AUG-PIN', place: 1, partText: '70-412B' }] };
  await ok(shop.act(id, 'PUT', '/places', left));
  await ok(shop.act(id, 'POST', '/authorisation', { by: 'Ole Brand', how: 'phone', amountMinor: 10_000 }));
  await ok(shop.act(id, 'POST', '/stage', { to: 'handover' }));
  await ok(shop.act(id, 'POST', '/stage', { to: 'handed-over' }));
}

/**
 * 20 pieces of 70-412B came in; two were given along as spares and one was fitted, three are picked for three tickets, 14
 * lie in C3. Then a bulletin says that units built 2016 to 2018 take 70-413, and bars 70-412B there.
 */
beforeAll(async () => {
  shop = await ShelfShop.open(db);
  await db.pool.query(
    `INSERT INTO part (key, maker_id, number, canonical, name) VALUES ('HOLM/70413', 1, '70-413', '70413', 'Auger pin, new')`,
  );
  await shop.receive('70-412B/P10', 2, { bin: 'C3' });
  holding = await shop.tickets(3, LATE);
  for (const id of holding) await ok(shop.pick(id, '70-412B'));
  gone = (await shop.tickets(1, LATE))[0]!;
  await goesOut(gone);
  const opens = [
    rule('PIN-NEW', {
      built: { from: '2016-01-01', to: '2019-01-01' },
      inForce: { from: '2026-10-01', to: null },
      required: 'HOLM/70413',
      barred: [{ part: 'HOLM/70412B', reason: 'breaks-later', note: 'its bar stock came too hard' }],
      action: 'call-back',
      replaces: ['PIN-LATE'],
    }),
  ];
  const saved = await shop.manager.ask<{ id: number; version: number }>('POST', '/bulletins', {
    ...{ kind: 'service-bulletin', publisher: 'Holmgard', number: 'HB-31', title: 'Pins that are too hard' },
    ...{ issued: '2026-10-01', received: '2026-10-20', draft: { opens, ends: [] } },
  });
  bulletin = saved.body;
}, 300_000);
afterEach(async () => expect(await shop.untrue()).toEqual([]));

const pulls = () => ok(shop.caller.get<ShelfPull[]>('/shelf/pulls'));

it('is asked before publishing what it would do on the shelf: how many, in which bin, picked for whom', async () => {
  const { shelf, tickets } = await ok(shop.manager.ask<WhatIf>('POST', `/bulletins/${bulletin.id}/what-if`));
  expect(tickets).toBe(3);
  expect(shelf).toMatchObject([
    { part: { number: '70-412B' }, kind: 'barred', stillGood: true, bin: 'C3', onHand: 17, location: 'Main shop' },
  ]);
  expect(shelf[0]!.holders.map(({ ticketId, pieces }) => [ticketId, pieces])).toEqual(holding.map((id) => [id, 1]));
  expect(await pulls()).toEqual([]);
});

it('once published flags every ticket that holds one, names the bin, and calls the owner for pin and spares', async () => {
  const { revision } = await ok(shop.manager.ask<WhatIf>('POST', `/bulletins/${bulletin.id}/what-if`));
  const path = `/bulletins/${bulletin.id}/publish`;
  const { recheck } = await ok(
    shop.manager.change<Published>('POST', path, bulletin.version, { whatIfRevision: revision }),
  );
  await judged(recheck.id);
  for (const id of holding) {
    const { flags } = await shop.ticket(id);
    expect(flags).toMatchObject([
      { placeName: 'picked', part: { number: '70-412B' }, required: { number: '70-413' }, state: 'open' },
    ]);
    expect(flags[0]!.sentence).toMatch(/^Picked and not fitted yet \(1\)\. .*its bar stock came too hard/);
  }
  const [pull, ...others] = await pulls();
  expect(others).toEqual([]);
  expect(pull).toMatchObject({
    sentence: 'Pull 14 from C3 and keep them apart: they are right for some units only; 3 more lie on the benches.',
    sentences: [
      'Barred at Auger pin, Snow thrower 2 (its bar stock came too hard): built 1 Jan 2016 to 31 Dec 2018.',
      'Still right at Auger pin, Snow thrower 2: built since 1 Jan 2019.',
    ],
    done: null,
  });
  const { items } = await ok(shop.manager.get<CallbackPage>('/callbacks'));
  expect(items).toHaveLength(1);
  expect(items[0]!.reasons.map(({ placeName, spare }) => [placeName, spare])).toEqual([
    ['left', false],
    ['spare', true],
  ]);
  expect(items[0]!.say).toContain(
    'The two spare pins you have, too, for Auger pin are no longer right; newer papers ask for another.',
  );
});

it('has none picked for a unit where it is barred, while it stays good for a unit where it is right', async () => {
  const [barred] = await shop.tickets(1, LATE);
  for (const asked of [{}, { position: null, purpose: 'spare' }]) {
    const refused = await shop.pick<Problem>(barred!, '70-412B', asked);
    expect(refused).toMatchObject({ status: 409, body: { field: 'exceptionReason' } });
  }
  const [own] = await shop.tickets(1, OWN);
  const picked = await ok(shop.pick(own!, '70-412B'));
  expect(picked.picks).toMatchObject([{ verdict: 'right' }]);
  expect(picked.flags).toEqual([]);
  await ok(shop.act(own!, 'POST', `/picks/${picked.picks[0]!.id}/return`));
});

it('holds a ticket back from handover until the part is returned, and then no longer', async () => {
  const [id] = holding;
  const { picks } = await shop.ticket(id!);
  const back = await ok(shop.act(id!, 'POST', `/picks/${picks[0]!.id}/return`));
  expect(back.flags).toMatchObject([{ state: 'cleared' }]);
  expect((await pulls())[0]!.sentence).toContain('Pull 15 from C3');
});

it("takes a manager's exception as the acceptance of the flag it raises", async () => {
  const [id] = await shop.tickets(1, LATE);
  const asked = { exceptionReason: 'maker agreed in writing', from: 'bought' };
  const picked = await ok(shop.pick(id!, '70-412B', asked, shop.manager));
  expect(picked.flags).toMatchObject([
    { state: 'accepted', placeName: 'picked', decision: { why: 'maker agreed in writing' } },
  ]);
});

it('is marked as seen to once, by whoever did it', async () => {
  const [pull] = await pulls();
  const path = `/shelf/pulls/${pull!.noticeId}`;
  const body = { itemId: pull!.item.id, note: 'red tag, second box' };
  const marked = await ok(shop.caller.ask<ShelfPull[]>('POST', path, body));
  expect(marked[0]!.done).toMatchObject({ by: 'The technician', pieces: 17, note: 'red tag, second box' });
  expect((await shop.caller.ask('POST', path, body)).status).toBe(409);
  expect((await shop.item('70-412B')).toPull).toBe(0);
});

it('warns at once when more of it is received', async () => {
  await db.pool.query('DELETE FROM shelf_pull');
  const { sentence } = await shop.receive('70-412B', 1);
  expect(sentence).toContain('Bulletin HB-31: Barred at Auger pin');
});

it('greets the unit with its spares when it comes in again, and calls nobody once they are handed back', async () => {
  const { unit } = await shop.ticket(gone);
  const counter = await shop.shop.as('counter');
  const opened = await counter.ask('POST', '/tickets', { ownerId: 900, unitId: unit.id, complaint: 'Called in' });
  const { id } = opened.body as { id: number };
  const here = await shop.ticket(id);
  expect(here.ownerSpares).toMatchObject([{ part: { number: '70-412B' }, quantity: 2, verdict: 'outdated' }]);
  const { onHand } = await shop.item('70-412B');
  const after = await ok(shop.act(id, 'POST', `/spares/${here.ownerSpares[0]!.pickId}/take-back`));
  expect(after.ownerSpares).toEqual([]);
  expect(after.history.at(-1)!.sentence).toBe('The owner handed back 2 x 70-412B.');
  const item = await shop.item('70-412B');
  expect(item.onHand).toBe(onHand + 2);
  expect(item.movements[0]!.sentence).toMatch(/^The owner handed back 2 for T-/);
});

it('lets everything go again when the bulletin is withdrawn', async () => {
  const now = await ok(shop.manager.get<{ version: number }>(`/bulletins/${bulletin.id}`));
  const path = `/bulletins/${bulletin.id}/withdraw`;
  const { recheck } = await ok(
    shop.manager.change<Published>('POST', path, now.version, { reason: 'the maker took it back' }),
  );
  await judged(recheck.id);
  expect(await pulls()).toEqual([]);
  for (const id of holding.slice(1))
    expect((await shop.ticket(id)).flags.map(({ state }) => state)).toEqual(['cleared']);
});
