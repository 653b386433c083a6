import { startWorker } from '../../apps/worker/src/start-worker';
import type { CallbackView, Problem, SheetView, UnitTrail } from '../../libs/contracts';
import { verifyTrail } from '../../libs/store';
import { withDatabase } from '../../libs/testing';
import { ApiShop, rule } from '../api/api-shop';
import { finished } from '../recheck/wait';
import { csvFor, said, SheetDesk } from './sheet-desk';

const db = withDatabase();
let shop: ApiShop;
let desk: SheetDesk;
const problems: unknown[] = [];

beforeAll(async () => {
  shop = await ApiShop.open(db);
  desk = new SheetDesk(shop.api.url, await shop.as('manager'));
  const worker = await startWorker({
    config: { redisUrl: undefined, workerConcurrency: 2, timeZone: 'UTC' },
    store: shop.store,
    clock: { now: () => shop.clock.nowMs, today: () => shop.clock.today },
    onError: (error) => problems.push(error),
    sweepEveryMs: 500,
  });
  db.beforeClose(() => worker.close());
}, 300_000);
afterEach(() => expect(problems).toEqual([]));

const counts = ({ outcome }: SheetView) => {
  const { add, change, same, rejected } = outcome!;
  return { add, change, same, rejected };
};
const table = async (sql: string): Promise<unknown[]> => (await db.pool.query<object>(sql)).rows;

const PARTS = csvFor('parts', [
  { maker: 'HOLM', number: '90-100', name: 'Belt, drive', price: '12.50' },
  {
    maker: 'HOLM',
    number: '90-101',
    name: 'Pin "hard"',
    price: '1,20',
    diameter: '8',
    length: '50',
    grade: 'ISO 898-1 8.8',
  },
  { maker: 'HOLM', number: '70-499', name: 'Bolt', price: '0.95' },
]);

describe('a spreadsheet of parts', () => {
  it('is looked at, imported whole, and the same file then changes nothing', async () => {
    const looked = await desk.look('parts', PARTS);
    expect(counts(looked)).toEqual({ add: 2, change: 1, same: 0, rejected: 0 });
    expect(await table(`SELECT 1 FROM part WHERE number LIKE '90-%'`)).toEqual([]);

    const imported = await desk.import(looked);
    expect(imported.status).toBe(200);
    expect(imported.body).toMatchObject({ state: 'done', outcome: { add: 2, change: 1 } });
    expect(
      await table(
        `SELECT key, price_minor, fastener->>'diameterMm' AS d FROM part WHERE number LIKE '90-%' OR number = '70-499' ORDER BY key`,
      ),
    ).toEqual([
      { key: 'HOLM/70499', price_minor: 95, d: null },
      { key: 'HOLM/90100', price_minor: 1_250, d: null },
      { key: 'HOLM/90101', price_minor: 120, d: '8' },
    ]);
    expect(
      await table(
        `SELECT act, change->'rows' AS rows FROM audit_entry WHERE noun = 'part' AND person_id IS NOT NULL ORDER BY id`,
      ),
    ).toEqual([
      { act: 'update', rows: 1 },
      { act: 'insert', rows: 2 },
    ]);
    expect(counts(await desk.look('parts', PARTS))).toEqual({ add: 0, change: 0, same: 3, rejected: 0 });
    expect((await desk.import<Problem>(await desk.look('parts', PARTS))).body.detail).toContain('in the shop already');
  });

  it('brings the bar codes of bags in, says whose a number is that stands in two rows, and keeps them where no column is', async () => {
    const numbers = async () =>
      table(`SELECT p.number, t.gtin, t.pack FROM part_trade_number t JOIN part p ON p.id = t.part_id ORDER BY t.gtin`);
    const bags = (rows: Readonly<Record<string, string>>[]) => csvFor('parts', rows);
    const pin = { maker: 'HOLM', number: '90-101', tradeNumbers: '6291041500213; 1629 1041 50021 0 x10' };
    const belt = { maker: 'HOLM', number: '90-100', tradeNumbers: '036000241457' };
    await desk.take('parts', bags([pin, belt]));
    const kept = [
      { number: '90-100', gtin: '00036000241457', pack: 1 },
      { number: '90-101', gtin: '06291041500213', pack: 1 },
      { number: '90-101', gtin: '16291041500210', pack: 10 },
    ];
    expect(await numbers()).toEqual(kept);
    expect(counts(await desk.look('parts', bags([pin, belt])))).toMatchObject({ same: 2, change: 0 });
    const file = (await desk.export('parts')).toString();
    expect(file).toContain('6291041500213; 16291041500210 x10');
    expect(counts(await desk.look('parts', file))).toMatchObject({ change: 0, rejected: 0 });

    const bad = await desk.look(
      'parts',
      bags([
        { maker: 'HOLM', number: '90-100', tradeNumbers: '6291041500214' },
        { maker: 'HOLM', number: '70-499', tradeNumbers: '6291041500213' },
      ]),
    );
    expect(bad.rejected.flatMap(({ problems }) => problems.map(({ says }) => says))).toEqual([
      '"6291041500214" is not accepted: its last digit should be 3 by the digits before it; read it again.',
      '6291041500213 is the number of 90-101 already; a number is of one part.',
    ]);
    await desk.take('parts', PARTS.replace('12.50', '12.75'));
    expect(await numbers()).toEqual(kept);
    await desk.take('parts', bags([{ ...belt, tradeNumbers: '' }]));
    expect(await numbers()).toEqual(kept.slice(1));
    await desk.take('parts', PARTS);
  });

  it('reads numbers of bags the same whether it is only looked at or imported: what a row gave up is free, what a rejected row named too', async () => {
    const bags = (rows: Readonly<Record<string, string>>[]) => csvFor('parts', rows);
    const of = (number: string, tradeNumbers: string) => ({ maker: 'HOLM', number, name: 'A bag', tradeNumbers });
    await desk.take('parts', bags([of('91-1', '4006381333931')]));
    // Far apart, so that the first is written before the last is looked at.
    const between = Array.from({ length: 2_100 }, (_, n) => of(`92-${n + 1}`, ''));
    const moved = await desk.look('parts', bags([of('91-1', ''), ...between, of('91-2', '4006381333931')]));
    expect(counts(moved)).toEqual({ add: 2_101, change: 1, same: 0, rejected: 0 });
    expect((await desk.import(moved)).status).toBeLessThan(300);
    expect(
      await table(
        `SELECT p.number FROM part_trade_number t JOIN part p ON p.id = t.part_id WHERE gtin = '04006381333931'`,
      ),
    ).toEqual([{ number: '91-2' }]);

    const twice = await desk.look(
      'parts',
      bags([
        of('91-3', '5901234123457'),
        of('91-3', '5901234123457; 8711253001202'),
        of('91-4', '8711253001202'),
        of('91-5', '5901234123457'),
      ]),
    );
    expect(twice.rejected.map(({ row, problems }) => [row, problems[0]!.says])).toEqual([
      [3, 'Row 2 speaks of part 91-3 already, and says otherwise; keep one.'],
      [5, '5901234123457 is given to another part in row 2; a number is of one part.'],
    ]);
  });

  it('names every damage by row and column, and one bad row keeps everything out until it is left out', async () => {
    const file = [
      'Maker;Part No;Description;Price',
      'HOLM;0012;Washer;0,10',
      'HOLM;0013;Washer;0,10',
      'HOLM;14;Washer;0,10',
      'HOLM;1.23E+11;Washer;0,10',
      'HOLM;12-Mar;Washer;0,10',
      'HOLM;=A2;Washer;0,10',
      'NOBODY;0015;Washer;0,10',
      'HOLM;;Washer;0,10',
      'HOLM;0016;"Quoted',
      'over two lines";0,10',
      'HOLM;0017;GrÃ¼n;0,10',
      'HOLM;0018;Washer;1,234',
      'HOLM;#N/A;Washer;1',
    ].join('\n');
    const looked = await desk.look('parts', file);
    expect(looked).toMatchObject({ delimiter: ';', encoding: 'utf-8', rows: 12 });
    expect(said(looked).sort()).toEqual([
      '11 Description broken-encoding',
      '12 Price ambiguous-number',
      '13 Part No sheet-fault',
      '4 Part No leading-zeros',
      '5 Part No scientific-notation',
      '6 Part No became-a-day',
      '7 Part No formula',
      '8 Maker not-on-file',
      '9 Part No missing',
    ]);
    const refused = await desk.import<Problem>(looked);
    expect([refused.status, refused.body.detail]).toEqual([
      409,
      expect.stringContaining('rows are rejected') as string,
    ]);
    expect(await table(`SELECT 1 FROM part WHERE canonical = '0012'`)).toEqual([]);
    const list = (await desk.download(`/sheets/${looked.id}/rejected`)).toString();
    expect(list.split('\r\n')[1]).toContain('4,');
    const again = await desk.look('parts', list);
    expect([again.rows, counts(again).rejected]).toEqual([9, 9]);
    expect((await desk.download(`/sheets/${again.id}/rejected`)).toString().split('\r\n')[0]).toBe(
      list.split('\r\n')[0],
    );
    const left = await desk.import(looked, true);
    expect(left.body).toMatchObject({ state: 'done', outcome: { add: 3, rejected: 9 } });
  });

  it('refuse what speaks of a groove that has no root, and give the row back as it stood, guarded once', async () => {
    const file = `Maker;Part No;Description;Diameter mm;Grade;Groove at mm\nHOLM;0019;'=SUM(A1);8;ISO 898-1 8.8;25`;
    const looked = await desk.look('parts', file);
    expect(looked.rejected.map(({ problems: found }) => found.map(({ says }) => says))).toEqual([
      [expect.stringContaining('groove.rootDiameterMm') as string],
    ]);
    const list = (await desk.download(`/sheets/${looked.id}/rejected`)).toString();
    expect(list.split('\r\n')[1]).toMatch(/^HOLM,0019,'=SUM\(A1\),8,/);
  });
});

describe('owners, units and past tickets', () => {
  const OWNERS = csvFor('owners', [
    {
      name: 'Mira Holt',
      phone: '0555 200',
      address: '5 Mill Lane',
      consent: 'yes',
      line: 'SNOW-2',
      model: 'S2',
      serial: '14030001',
      options: 'no cab',
      firstSeen: '2015-01-10',
    },
    { name: 'Mira Holt', phone: '0555 200', consent: 'yes', line: 'SNOW-2', model: 'S2W', serial: '17050002' },
    { name: 'Jon Ask', phone: '0555 201', consent: 'no' },
  ]);

  it('come in with their build days worked out; again, they change nothing', async () => {
    expect(counts(await desk.take('owners', OWNERS))).toEqual({ add: 3, change: 0, same: 0, rejected: 0 });
    expect(
      await table(
        `SELECT o.name, u.serial, u.built::text, u.serial_scheme FROM owner o LEFT JOIN unit u ON u.owner_id = o.id WHERE o.phone LIKE '0555 20%' ORDER BY u.serial`,
      ),
    ).toEqual([
      { name: 'Mira Holt', serial: '14030001', built: '{[16130,16161)}', serial_scheme: 'HOLM-DATED' },
      { name: 'Mira Holt', serial: '17050002', built: '{[17287,17318)}', serial_scheme: 'HOLM-DATED' },
      { name: 'Jon Ask', serial: null, built: null, serial_scheme: null },
    ]);
    expect(counts(await desk.look('owners', OWNERS))).toEqual({ add: 0, change: 0, same: 3, rejected: 0 });
    const moved = OWNERS.replace('5 Mill Lane', '6 Mill Lane');
    expect(counts(await desk.look('owners', moved))).toEqual({ add: 0, change: 1, same: 2, rejected: 0 });
  });

  it('stand in the trail by the batch, each unit with its own and nothing of its owner', async () => {
    const [unit] = (await table(`SELECT id FROM unit WHERE serial = '14030001'`)) as { id: number }[];
    const { body } = await desk.caller.get<UnitTrail>(`/units/${unit!.id}/trail`);
    expect(body.items.map(({ noun, act, by }) => ({ noun, act, by }))).toEqual(
      ['unit', 'evidence'].map((noun) => ({ noun, act: 'insert', by: 'The manager' })),
    );
    expect(
      await table(`SELECT 1 FROM audit_batch WHERE rows::text LIKE '%Mira%' OR rows::text LIKE '%0555 200%'`),
    ).toEqual([]);
    expect(await table(`SELECT 1 FROM audit_batch WHERE rows::text LIKE '%not kept here%'`)).not.toEqual([]);
    expect((await verifyTrail(db.pool)).fault).toBeNull();
  });

  it('are made of the rows that go in: a rejected row says nothing of its owner either', async () => {
    const owners = csvFor('owners', [
      { name: 'Una Vik', phone: '0555 210', address: '1 Wrong Lane', consent: 'yes', line: 'NO-SUCH', serial: '1' },
      {
        name: 'Una Vik',
        phone: '0555 210',
        address: '2 Right Lane',
        consent: 'no',
        line: 'SNOW-2',
        serial: '14030091',
      },
      { name: 'Una Vik', phone: '0555 210', address: '3 Other Lane' },
    ]);
    const looked = await desk.look('owners', owners);
    expect(counts(looked)).toEqual({ add: 1, change: 0, same: 0, rejected: 2 });
    expect(said(looked)).toEqual(['2 Line not-on-file', '4 Address conflict']);
    expect((await desk.import(looked, true)).status).toBe(200);
    expect(await table(`SELECT address, consent FROM owner WHERE phone = '0555 210'`)).toEqual([
      { address: '2 Right Lane', consent: false },
    ]);
  });

  it('take part in rechecks and callbacks afterwards: what a past ticket left is judged, and its owner is on the list', async () => {
    const tickets = csvFor('tickets', [
      {
        number: 'OLD-1',
        opened: '2026-09-01',
        closed: '2026-09-03',
        line: 'SNOW-2',
        serial: '17050002',
        complaint: 'Auger stuck',
        position: 'AUG-PIN',
        place: '1',
        side: 'left',
        part: '70-412b',
      },
      {
        number: 'OLD-1',
        opened: '2026-09-01',
        closed: '2026-09-03',
        line: 'SNOW-2',
        serial: '17050002',
        complaint: 'Auger stuck',
        position: 'AUG-PIN',
        place: '2',
        side: 'left',
        part: 'XX-9',
      },
    ]);
    const taken = await desk.take('tickets', tickets);
    expect(counts(taken)).toEqual({ add: 2, change: 0, same: 0, rejected: 0 });
    expect(await finished(shop.store, taken.outcome!.recheckId!)).toMatchObject({
      cause: 'import',
      state: 'done',
      setAside: 0,
      judged: 2,
    });
    expect(
      await table(
        `SELECT i.place, i.verdict, p.key, p.listed, i.fitted_on FROM install i JOIN part p ON p.id = i.part_id JOIN ticket t ON t.id = i.ticket_id WHERE t.number = 'OLD-1' ORDER BY 1`,
      ),
    ).toEqual([
      { place: 1, verdict: 'right', key: 'HOLM/70412B', listed: true, fitted_on: 20_699 },
      { place: 2, verdict: 'wrong', key: 'HOLM/XX9', listed: false, fitted_on: 20_699 },
    ]);
    expect(counts(await desk.look('tickets', tickets))).toEqual({ add: 0, change: 0, same: 2, rejected: 0 });
    const other = tickets.replace('XX-9', '70-412A');
    expect(said(await desk.look('tickets', other))).toContain('3 Part number conflict');

    const bulletin = {
      publisher: 'Holmgard',
      number: 'SB-77',
      title: 'Late pins shear',
      issued: '2026-11-01',
      received: '2026-11-02',
      draft: {
        opens: [
          {
            ...rule('SB-77-1', {
              required: 'HOLM/90101',
              built: { from: '2016-01-01', to: null },
              action: 'call-back',
              replaces: ['PIN-LATE'],
              inForce: { from: '2026-11-01', to: null },
            }),
          },
        ],
        ends: [],
      },
    };
    const saved = await desk.caller.ask<{ id: number; version: number }>('POST', '/bulletins', bulletin);
    const { body: seen } = await desk.caller.ask<{ revision: number }>(
      'POST',
      `/bulletins/${saved.body.id}/what-if`,
      {},
    );
    const published = await desk.caller.change<{ recheck: { id: number } }>(
      'POST',
      `/bulletins/${saved.body.id}/publish`,
      1,
      { whatIfRevision: seen.revision },
    );
    expect([saved.status, published.status]).toEqual([201, 200]);
    await finished(shop.store, published.body.recheck.id);
    const calls = await desk.caller.get<{ callbacks: CallbackView[] }>('/callbacks');
    expect(JSON.stringify(calls.body)).toContain('Mira Holt');
  });

  it('a new ticket still gets the next number of its year', async () => {
    const { number } = await shop.newTicket('18010001');
    expect(number).toMatch(/^26-\d{4}$/);
    expect((await shop.newTicket('18010002')).number > number).toBe(true);
  });
});

describe('papers of rules that are published at once', () => {
  const row = (paper: string) => ({
    paper,
    publisher: 'Holmgard',
    title: 'Pins again',
    issued: '2026-11-03',
    key: `${paper}-1`,
    line: 'SNOW-2',
    positions: 'AUG-PIN',
    builtFrom: '2030-01-01',
    required: '70-412A',
  });

  it('are refused together when a draft on file no longer fits once the one before it is published', async () => {
    for (const [number, on] of [
      ['SB-81', '2026-12-01'],
      ['SB-82', '2027-01-01'],
    ] as const) {
      const head = { publisher: 'Holmgard', number, title: 'Pins', issued: '2026-11-03', received: '2026-11-04' };
      const draft = { opens: [], ends: [{ rule: 'PIN-EARLY', on }] };
      expect((await desk.caller.ask('POST', '/bulletins', { ...head, draft })).status).toBe(201);
    }
    const looked = await desk.look('rules', csvFor('rules', [row('SB-81'), row('SB-82')]), { publish: true });
    expect(counts(looked)).toEqual({ add: 0, change: 2, same: 0, rejected: 0 });
    const refused = await desk.import<Problem>(looked);
    expect([refused.status, refused.body.detail]).toEqual([409, expect.stringContaining('Paper SB-82') as string]);
    expect(await table(`SELECT state FROM source WHERE number LIKE 'SB-8_'`)).toEqual([
      { state: 'draft' },
      { state: 'draft' },
    ]);
    expect(await table(`SELECT doing FROM sheet WHERE id = ${looked.id}`)).toEqual([{ doing: null }]);
  });
});
