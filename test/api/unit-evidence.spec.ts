import type { LookUpAnswer, Problem, TicketView, UnitView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let technician: Caller;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  technician = await shop.as('technician');
}, 300_000);

type Given = Record<string, string> & { kind: string };
const again = (ticket: TicketView) => technician.get(`/tickets/${ticket.id}`).then(({ body }) => body);
const add = (unit: UnitView, evidence: Given) =>
  technician.change<UnitView>('POST', `/units/${unit.id}/evidence`, unit.version, { evidence });
const setAside = (unit: UnitView, id: string, reason: string | null) =>
  technician.change<UnitView>('POST', `/units/${unit.id}/evidence/${id}/set-aside`, unit.version, { reason });

async function added(unit: UnitView, evidence: Given): Promise<UnitView> {
  const { status, body } = await add(unit, evidence);
  if (status !== 200) throw new Error(JSON.stringify(body));
  return body;
}

/** A ticket in inspection whose unit has no serial and holds the late pin in both places. */
async function withLatePins(): Promise<TicketView> {
  const opened = await shop.newTicket(null, { serialAbsent: 'plate gone' });
  const at = await technician.change('POST', `/tickets/${opened.id}/stage`, opened.version, { to: 'inspection' });
  const places = [1, 2].map((place) => ({ position: 'AUG-PIN', place, partText: '70-412B', condition: 'sound' }));
  const path = `/tickets/${opened.id}/places`;
  return (await technician.change('PUT', path, at.body.version, { side: 'found', places })).body;
}

const verdicts = ({ places }: TicketView) =>
  places.flatMap(({ position, found }) => (position === 'AUG-PIN' ? [found?.verdict?.verdict] : []));

describe('evidence of the build date', () => {
  it('of every kind is taken, dated, and narrows the answer', async () => {
    let { unit } = await shop.newTicket(null, { serialAbsent: 'plate gone' });
    const given: Given[] = [
      // Week 9 of 2017 by full weeks, Sunday to Saturday, began on 26 February (49 CFR 574.5).
      { kind: 'tyre-code', code: '0917' },
      // Approved 14 August 2014, by the title pages of ANSI/OPEI B71.3-2014.
      { kind: 'standard-edition', standard: 'ANSI B71.3', edition: '2014' },
      // H is 2017 (EPA, family naming); model year 2017 began on 2 January 2016 at the earliest (40 CFR 85.2302).
      { kind: 'engine-family', family: 'HZQVS.2081DA', engine: 'small-spark-ignition' },
      // A check-digit example of 49 CFR 565; K is 1989 or 2019.
      { kind: 'vin', vin: '1M8GDM9AXKP042788' },
      { kind: 'part-stamp', part: 'hose', date: '2016' },
      { kind: 'receipt', date: '2019-08' },
      { kind: 'printed-date', date: '2018' },
    ];
    for (const evidence of given) unit = await added(unit, evidence);
    const daysOf = (kind: string) => unit.buildDates.evidence.find((piece) => piece.kind === kind)!.days;
    expect(daysOf('tyre-code')[0]!.from).toBe('2017-02-26');
    expect(daysOf('standard-edition')[0]!.from).toBe('2014-08-14');
    expect(daysOf('engine-family')[0]!.from).toBe('2016-01-02');
    expect(daysOf('vin').at(-1)).toEqual({ from: '2018-01-02', to: '2020-01-01' });
    expect(daysOf('part-stamp')[0]!.from).toBe('2016-01-01');
    expect(daysOf('receipt').at(-1)!.to).toBe('2019-09-01');
    expect(unit.buildDates.evidence.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['production-span', 'first-seen']),
    );
    expect(unit.buildDates.days).toEqual([{ from: '2018-01-02', to: '2019-01-01' }]);
  });

  it('judges what the unit holds at once, and again when it is set aside with a reason', async () => {
    const ticket = await withLatePins();
    expect(verdicts(ticket)).toEqual(['undecided', 'undecided']);
    expect(ticket.unit.buildDates).toMatchObject({ needed: true });
    // Nobody is sent to read a serial that is on record as gone.
    const [next, ...others] = ticket.unit.buildDates.lookAt;
    expect(next!.sentence).toContain('Read the build date on the data plate');
    expect(others.map(({ kind }) => kind)).not.toContain('serial-scheme');

    const dated = await added(ticket.unit, { kind: 'printed-date', date: '2017-03' });
    expect(dated.buildDates).toMatchObject({ needed: false, lookAt: [] });
    const settled = await again(ticket);
    expect(verdicts(settled)).toEqual(['right', 'right']);
    expect(settled.flags.filter(({ state }) => state === 'open')).toEqual([]);

    const { id } = dated.buildDates.evidence.find(({ kind }) => kind === 'printed-date')!;
    const empty = await setAside(dated, id, '  ');
    expect([empty.status, (empty.body as unknown as Problem).detail]).toEqual([400, expect.stringContaining('reason')]);
    const { body: aside } = await setAside(dated, id, 'plate from another machine');
    const piece = aside.buildDates.evidence.find((one) => one.id === id)!;
    expect(piece.setAside).toMatchObject({ why: 'plate from another machine', by: 'The technician' });
    expect(verdicts(await again(ticket))).toEqual(['undecided', 'undecided']);
    await setAside(aside, id, null);
    expect(verdicts(await again(ticket))).toEqual(['right', 'right']);
  });

  it('that contradicts itself is named, piece by piece', async () => {
    const ticket = await withLatePins();
    const first = await added(ticket.unit, { kind: 'printed-date', date: '2017-03' });
    const second = await added(first, { kind: 'receipt', date: '2015-06-01' });
    const { evidence, conflicts, days } = second.buildDates;
    const kinds = conflicts.map((ids) => ids.map((id) => evidence.find((piece) => piece.id === id)!.kind).sort());
    expect(kinds).toEqual([['printed-date', 'receipt']]);
    expect(days).toEqual([]);
  });

  it('is not needed where every possible day gives the same parts', async () => {
    const { unit } = await shop.newTicket('18030001');
    expect(unit.buildDates).toMatchObject({ needed: false, lookAt: [] });
  });
});

describe('a serial', () => {
  it('is offered otherwise when it does not fit, and only then; nothing is replaced', async () => {
    const { unit } = await shop.newTicket('I8O30001');
    expect(unit.serial).toBe('I8O30001');
    const [offer] = unit.buildDates.otherReadings;
    expect(offer).toMatchObject({ kind: 'serial-scheme', serial: '18030001' });
    expect((await shop.newTicket('18030002')).unit.buildDates.otherReadings).toEqual([]);
  });
});

describe('a vehicle number with a misread character', () => {
  it('is refused with the reading it could be', async () => {
    const { unit } = await shop.newTicket(null, { serialAbsent: 'plate gone' });
    const { status, body } = await add(unit, { kind: 'vin', vin: '1M8GDM9AXKPO42788' });
    expect(status).toBe(400);
    expect((body as unknown as Problem).detail).toContain('Could 1M8GDM9AXKPO42788 be 1M8GDM9AXKP042788?');
  });
});

describe('the look-up at the counter', () => {
  it('answers dates and, per position, the ruling; evidence narrows both, and nothing is kept', async () => {
    const counter = await shop.as('counter');
    const ask = async (evidence: Given[]) => {
      const asked = { lineCode: 'SNOW-2', modelNumber: null, serial: null, options: {}, evidence };
      return (await counter.ask<LookUpAnswer>('POST', '/look-up', asked)).body;
    };
    const count = async () => (await db.pool.query<object>('SELECT count(*) FROM evidence')).rows;
    const before = await count();
    const open = await ask([]);
    expect(open.rulings.map(({ position, settled }) => [position, settled])).toEqual([
      ['AUG-PIN', false],
      ['BELT', true],
    ]);
    const dated = await ask([{ kind: 'receipt', date: '2015-11' }]);
    expect(dated.buildDates.days).toEqual([{ from: '2012-01-01', to: '2015-12-01' }]);
    expect(dated.rulings[0]).toMatchObject({ settled: true, pieces: [{ required: { number: '70-412A' } }] });
    const offered = await ask([{ kind: 'vin', vin: '1M8GDM9AXKPO42788' }]);
    expect(offered.buildDates.otherReadings).toMatchObject([{ kind: 'vin', serial: '1M8GDM9AXKP042788' }]);
    expect(await count()).toEqual(before);
  });

  it('answers about the positions asked for and no other, in the order of the line', async () => {
    const counter = await shop.as('counter');
    const ask = async (positions?: readonly string[]) =>
      (await counter.ask<LookUpAnswer>('POST', '/look-up', { lineCode: 'SNOW-2', positions })).body;
    const whole = await ask();
    const pin = await ask(['AUG-PIN']);
    expect(pin.positions.map(({ code }) => code)).toEqual(['AUG-PIN']);
    expect(pin.rulings).toEqual(whole.rulings.filter(({ position }) => position === 'AUG-PIN'));
    expect(await ask(['BELT', 'AUG-PIN'])).toEqual(whole);
  });

  it('refuses a position the line has not, naming those it has', async () => {
    const counter = await shop.as('counter');
    const asked = { lineCode: 'SNOW-2', positions: ['AUG-PIN', 'HANDLE'] };
    const { status, body } = await counter.ask<Problem>('POST', '/look-up', asked);
    expect([status, body.field]).toEqual([400, 'positions']);
    expect(body.detail).toMatch(/has no position 'HANDLE'; its positions are .*AUG-PIN, .*BELT/);
    const none = await counter.ask<Problem>('POST', '/look-up', { lineCode: 'SNOW-2', positions: [] });
    expect([none.status, none.body.field]).toEqual([400, 'positions']);
  });
});
