import type { MoneySettings, Problem, TicketView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Answer, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let counter: Caller;
let technician: Caller;
let manager: Caller;
let ticket: TicketView;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  counter = await shop.as('counter');
  technician = await shop.as('technician');
  manager = await shop.as('manager');
  ticket = await shop.newTicket('18020001');
}, 300_000);

const VAT: MoneySettings = {
  currency: 'EUR',
  tax: { name: 'VAT', basisPoints: 2_100, included: false },
  hourMinor: 6_000,
};

async function kept(answer: Promise<Answer<TicketView>>): Promise<TicketView> {
  const { status, body } = await answer;
  if (status !== 200) throw new Error(JSON.stringify(body));
  return (ticket = body);
}
const act = (who: Caller, method: string, path: string, body?: unknown) =>
  who.change<TicketView>(method, `/tickets/${ticket.id}${path}`, ticket.version, body);
const points = (stage: string) => ticket.missing.find((one) => one.stage === stage)!.points.map(({ code }) => code);

async function toPartsSelection(): Promise<void> {
  await kept(act(counter, 'POST', '/stage', { to: 'inspection' }));
  const places = [
    { position: 'AUG-PIN', place: 1, partText: '70-412A', condition: 'sheared' },
    { position: 'AUG-PIN', place: 2, partText: '70-412B', condition: 'sound' },
    { position: 'BELT', place: 1, partText: '80-001', condition: 'sound' },
  ];
  await kept(act(technician, 'PUT', '/places', { side: 'found', places }));
  await kept(act(technician, 'POST', '/stage', { to: 'parts-selection' }));
}

describe('the estimate of a ticket', () => {
  it('adds tax by the shop’s setting, which only those who settle things may change', async () => {
    expect((await counter.ask('PUT', '/settings/money', VAT)).status).toBe(403);
    expect((await manager.settle('PUT', '/settings/money', { ...VAT, currency: 'euro' })).status).toBe(400);
    expect((await manager.settle('PUT', '/settings/money', VAT)).body).toMatchObject(VAT);

    await toPartsSelection();
    const pick = { position: 'AUG-PIN', partText: '70-412B', quantity: 1, purpose: 'fit' };
    await kept(act(technician, 'POST', '/picks', pick));
    await kept(
      act(technician, 'PUT', '/labour', {
        lines: [
          { kind: 'labour', what: 'Change the pin', minutes: 30, minor: 3_000 },
          { kind: 'other', what: 'Fetched from the owner', minutes: 0, minor: 1_000 },
        ],
      }),
    );
    expect(ticket.labour).toMatchObject({ minutes: 30, minor: 4_000 });
    // 2.75 + 30.00 + 10.00, and 21 % of 42.75 is 8.9775
    expect(ticket.estimate).toMatchObject({ netMinor: 4_275, taxMinor: 898, totalMinor: 5_173, differs: true });
    expect(ticket.totalMinor).toBe(5_173);
  });

  it('keeps the gate to the repair closed until the owner has said yes', async () => {
    expect(points('parts-selection')).toEqual(['not-authorised']);
    const shut = await act(technician, 'POST', '/stage', { to: 'repair' });
    expect((shut.body as unknown as Problem).missing).toEqual([
      "Ask for the owner's word: the estimate comes to 51.73 EUR.",
    ]);
  });

  it('is written down once as it stands, and a revision keeps the one before', async () => {
    await kept(act(counter, 'POST', '/estimates'));
    expect(ticket.estimate.revisions).toMatchObject([{ revision: 1, totalMinor: 5_173, by: 'The counter' }]);
    expect(ticket.estimate.differs).toBe(false);
    const again = await act(counter, 'POST', '/estimates');
    expect([again.status, (again.body as unknown as Problem).detail]).toEqual([
      409,
      'Revision 1 says the same already.',
    ]);

    await kept(
      act(technician, 'POST', '/picks', { position: 'AUG-PIN', partText: '70-412B', quantity: 2, purpose: 'spare' }),
    );
    expect(ticket.estimate.differs).toBe(true);
    await kept(act(counter, 'POST', '/estimates'));
    expect(ticket.estimate.revisions.map(({ revision, totalMinor }) => [revision, totalMinor])).toEqual([
      [2, 5_838],
      [1, 5_173],
    ]);
    await expect(db.pool.query('UPDATE estimate SET total_minor = 1')).rejects.toThrow('only ever added to');
  });

  it('records who said yes, how, when, to which amount and revision', async () => {
    const strange = await act(counter, 'POST', '/authorisation', {
      by: 'Ole',
      how: 'phone',
      amountMinor: 1,
      revision: 9,
    });
    expect([strange.status, (strange.body as unknown as Problem).field]).toEqual([400, 'revision']);
    await kept(
      act(counter, 'POST', '/authorisation', { by: 'Ole Brand', how: 'phone', amountMinor: 5_838, revision: 2 }),
    );
    expect(ticket.authorisation).toEqual({
      by: 'Ole Brand',
      how: 'phone',
      amountMinor: 5_838,
      revision: 2,
      at: '2026-11-20T10:00:00.000Z',
      recordedBy: 'The counter',
    });
    expect(ticket.history.at(-1)!.sentence).toBe(
      'Ole Brand authorised the work (phone), up to 58.38, on revision 2 of the estimate.',
    );
    expect(points('parts-selection')).toEqual([]);
  });

  it('asks for a new yes when the work grows beyond it, at the next gate too', async () => {
    await kept(act(technician, 'POST', '/stage', { to: 'repair' }));
    const lines = [{ kind: 'labour', what: 'Change the pin, seized', minutes: 60, minor: 6_000 }];
    await kept(act(technician, 'PUT', '/labour', { lines }));
    expect(points('repair')).toContain('not-authorised');
    const [sentence] = ticket.missing
      .find(({ stage }) => stage === 'repair')!
      .points.filter(({ code }) => code === 'not-authorised')
      .map((point) => point.sentence);
    expect(sentence).toBe(
      "Ask for the owner's word again: the estimate comes to 82.58 EUR, and the owner said yes to 58.38 EUR.",
    );

    await kept(act(counter, 'POST', '/authorisation', { by: 'Ole Brand', how: 'in-person', amountMinor: 9_000 }));
    expect(points('repair')).not.toContain('not-authorised');
    // Said to the estimate as it stands, so that was written down with it.
    expect(ticket.estimate.revisions[0]).toMatchObject({ revision: 3, totalMinor: 8_258 });
    expect(ticket.authorisation).toMatchObject({ revision: 3, amountMinor: 9_000 });
  });

  it('keeps the tax it was written down with when the shop’s tax changes', async () => {
    const other = { ...VAT, tax: { name: 'VAT', basisPoints: 1_000, included: false } };
    await manager.settle('PUT', '/settings/money', other);
    ticket = (await counter.get(`/tickets/${ticket.id}`)).body;
    expect(ticket.estimate.totalMinor).toBe(7_508);
    expect(ticket.estimate.differs).toBe(true);
    expect(ticket.estimate.revisions[0]!.tax).toEqual(VAT.tax);
    await manager.settle('PUT', '/settings/money', VAT);
  });

  it('closes with the ticket, and stands line by line in the table for the books', async () => {
    const ticks = ticket.safety.map(({ id }) => id);
    ticket = (await counter.get(`/tickets/${ticket.id}`)).body;
    await kept(act(technician, 'PUT', '/safety', { checks: ticks }));
    const left = { side: 'left', places: [{ position: 'AUG-PIN', place: 1, partText: '70-412B' }] };
    await kept(act(technician, 'PUT', '/places', left));
    await kept(act(technician, 'POST', '/stage', { to: 'handover' }));
    for (const flag of ticket.flags.filter(({ state }) => state === 'open')) {
      await manager.change('POST', `/flags/${flag.id}/decide`, flag.version, { decision: 'accept', reason: 'seen it' });
    }
    ticket = (await counter.get(`/tickets/${ticket.id}`)).body;
    await kept(act(technician, 'POST', '/stage', { to: 'handed-over' }));

    const table = async (who: Caller, from: string, to: string) => {
      const answer = await fetch(`${shop.api.url}/api/bookkeeping?from=${from}&to=${to}`, {
        headers: { cookie: who.cookie },
      });
      return { type: answer.headers.get('content-type'), text: await answer.text() };
    };
    const { type, text } = await table(manager, '2026-11-20', '2026-11-21');
    expect(type).toBe('text/csv; charset=utf-8');
    const [, ...rows] = text
      .trim()
      .split('\r\n')
      .map((row) => row.split(','));
    const number = ticket.number;
    expect(rows.map((row) => row.slice(2, 12))).toEqual([
      [number, 'Ole Brand', '3', '1', 'part', '70-412B', '"Auger pin', ' late"', '1', '0'],
      [number, 'Ole Brand', '3', '2', 'spare', '70-412B', '"Auger pin', ' late"', '2', '0'],
      [number, 'Ole Brand', '3', '3', 'labour', '', '"Change the pin', ' seized"', '1', '60'],
    ]);
    expect(rows[0]!.slice(-4)).toEqual(['68.25', '14.33', '82.58', '90.00']);
    expect(rows[1]!.slice(-4)).toEqual(['', '', '', '']);
    expect((await table(manager, '2026-11-21', '2026-11-22')).text.trim().split('\r\n')).toHaveLength(1);
    expect((await table(counter, '2026-11-20', '2026-11-21')).text).toContain('may not do this');
  });
});
