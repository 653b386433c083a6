import type { Problem, Published, TicketView, UnitView, UnitVisit, WhatIf } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { SAFETY_POINTS } from '../../libs/ticket';
import { readPdf } from '../prints/read-pdf';
import { ApiShop, rule, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let technician: Caller;
let ticket: TicketView;

async function act(method: string, path: string, body: unknown): Promise<TicketView> {
  const answer = await technician.change(method, `/tickets/${ticket.id}${path}`, ticket.version, body);
  if (answer.status !== 200) throw new Error(JSON.stringify(answer.body));
  return (ticket = answer.body);
}
const look = async () => (ticket = (await technician.get(`/tickets/${ticket.id}`)).body);
const set = <T = UnitView>(warranty: unknown, version = ticket.unit.version) =>
  technician.change<T>('PUT', `/units/${ticket.unit.id}/warranty`, version, { warranty });

/** Bars 70-412A at the auger pin of every unit, and says that it ends the warranty. */
async function barTheEarlyPin(): Promise<void> {
  const manager = await shop.as('manager');
  const bars = [{ part: 'HOLM/70412A', reason: 'other', note: 'cast, not drawn', voidsWarranty: true }];
  const saved = await manager.ask<{ id: number; version: number }>('POST', '/bulletins', {
    ...{ kind: 'service-bulletin', publisher: 'Holmgard', number: 'HB-40', title: 'Cast pins' },
    ...{ issued: '2026-09-01', received: '2026-09-10' },
    draft: { opens: [rule('CAST', { inForce: { from: '2026-09-01', to: null }, barred: bars as never })], ends: [] },
  });
  const { id, version } = saved.body;
  const { revision } = (await manager.ask<WhatIf>('POST', `/bulletins/${id}/what-if`)).body;
  const answer = await manager.change<Published>('POST', `/bulletins/${id}/publish`, version, {
    whatIfRevision: revision,
  });
  if (answer.status !== 200) throw new Error(JSON.stringify(answer.body));
}

beforeAll(async () => {
  shop = await ApiShop.open(db);
  technician = await shop.as('technician');
  ticket = await shop.newTicket('17030042');
}, 300_000);

describe('the warranty of a unit', () => {
  it('is written down on the unit as it was seen, and its end is worked out', async () => {
    const later = await set<Problem>({ boughtOn: '2026-11-21', months: 24 });
    expect([later.status, later.body.field]).toEqual([400, 'warranty.boughtOn']);
    expect((await set({ boughtOn: '2025-02-30', months: 24 })).status).toBe(400);
    expect((await set({ boughtOn: '2025-08-31', months: 0 })).status).toBe(400);
    const kept = await set({ boughtOn: '2025-08-31', months: 18 });
    expect(kept.body.warranty).toEqual({
      boughtOn: '2025-08-31',
      months: 18,
      lastDay: '2027-02-28',
      runs: true,
      sentence: 'Bought 31 Aug 2025, under warranty for 18 months: up to and including 28 Feb 2027.',
    });
    expect((await set<Problem>(null)).status).toBe(412);
    expect((await look()).history.at(-1)!.sentence).toBe('Warranty: bought 31 Aug 2025, 18 months.');
    const trail = await db.pool.query(
      `SELECT change FROM audit_entry WHERE noun = 'unit' AND act = 'update' AND change ? 'bought_on'`,
    );
    expect(trail.rows).toMatchObject([{ change: { bought_on: [null, '2025-08-31'], warranty_months: [null, 18] } }]);
  });

  it('is at stake where a paper says so, which is told with the paper before the part is picked', async () => {
    await act('POST', '/stage', { to: 'inspection' });
    const found = [
      { position: 'AUG-PIN', place: 1, condition: 'sheared', partText: '70-499' },
      { position: 'AUG-PIN', place: 2, condition: 'sound', partText: '70-412B' },
      { position: 'BELT', place: 1, condition: 'sound', partText: '80-001' },
    ];
    await act('PUT', '/places', { side: 'found', places: found });
    await act('POST', '/stage', { to: 'parts-selection' });
    await barTheEarlyPin();
    const ruling = (await look()).rulings.find(({ position }) => position === 'AUG-PIN')!;
    const bar = ruling.pieces[0]!.barred.find(({ part }) => part.number === '70-412A');
    expect(bar).toMatchObject({
      reason: "cast, not drawn; it ends the maker's warranty",
      source: 'service bulletin HB-40 of 1 Sep 2026',
      voidsWarranty: true,
    });
    const other = ruling.pieces[0]!.barred.find(({ part }) => part.number === '70-499');
    expect(other).toMatchObject({ voidsWarranty: false });
    const pick = { position: 'AUG-PIN', partText: '70-412A', quantity: 1, purpose: 'fit' };
    const refused = await technician.change<Problem>('POST', `/tickets/${ticket.id}/picks`, ticket.version, pick);
    expect([refused.status, refused.body.field]).toEqual([409, 'exceptionReason']);
    expect(refused.body.detail).toContain("cast, not drawn; it ends the maker's warranty");
    expect(refused.body.detail).toContain('service bulletin HB-40 of 1 Sep 2026');
  });

  it('stands on the ticket, the unit and the printed sheet with what was fitted where', async () => {
    await act('POST', '/picks', { position: 'AUG-PIN', partText: '70-412B', quantity: 1, purpose: 'fit' });
    const left = [{ position: 'AUG-PIN', place: 1, partText: '70-412B' }];
    await act('POST', '/authorisation', { by: 'Ole Brand', how: 'phone', amountMinor: 100_000 });
    await act('POST', '/stage', { to: 'repair' });
    await act('PUT', '/safety', { checks: SAFETY_POINTS.map(({ id }) => id) });
    await act('PUT', '/places', { side: 'left', places: left });
    const touched = {
      where: 'Auger pin, left',
      part: { number: '70-412B' },
      ticket: { id: ticket.id, number: ticket.number },
      on: '2026-11-20',
      barred: null,
    };
    expect(ticket.touched).toMatchObject([touched]);
    const { body: visit } = await technician.get<UnitVisit>(`/units/${ticket.unit.id}`);
    expect(visit.touched).toMatchObject([touched]);
    expect(visit.unit.warranty).toMatchObject({ lastDay: '2027-02-28' });
    const sheet = async () => {
      const { cookie } = technician;
      const answer = await fetch(`${shop.api.url}/api/tickets/${ticket.id}/sheet.pdf`, { headers: { cookie } });
      return readPdf(new Uint8Array(await answer.arrayBuffer()))
        .pages.map(({ text }) => text)
        .join(' ');
    };
    const text = await sheet();
    expect(text).toContain('Bought 31 Aug 2025, under warranty for 18 months: up to and including 28 Feb 2027.');
    expect(text).toContain(`Auger pin, left: 70-412B Auger pin, late, 20 Nov 2026 (${ticket.number})`);
    // Another hand fitted the cast one, once: the sheet says so.
    await db.pool.query(
      `UPDATE place_record SET part_id = (SELECT id FROM part WHERE number = '70-412A') WHERE ticket_id = $1 AND side = 'left'`,
      [ticket.id],
    );
    expect((await look()).touched).toMatchObject([
      { barred: "cast, not drawn; it ends the maker's warranty, by service bulletin HB-40 of 1 Sep 2026" },
    ]);
    expect(await sheet()).toContain('Not for this unit: cast, not drawn');
  }, 120_000);
});
