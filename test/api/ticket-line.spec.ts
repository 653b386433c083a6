import type { Problem, RecordPlaces, TicketView } from '../../libs/contracts';
import { SAFETY_POINTS } from '../../libs/ticket';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let technician: Caller;
let manager: Caller;

beforeAll(async () => {
  shop = await ApiShop.open(db);
  technician = await shop.as('technician');
  manager = await shop.as('manager');
}, 300_000);

type Place = Partial<RecordPlaces['places'][number]> & { position: string; place: number };

const record = (ticket: TicketView, side: 'found' | 'left', places: Place[]) =>
  technician.change('PUT', `/tickets/${ticket.id}/places`, ticket.version, { side, places });
const move = (ticket: TicketView, to: string, reason?: string) =>
  technician.change('POST', `/tickets/${ticket.id}/stage`, ticket.version, { to, reason });
const pick = (ticket: TicketView, body: Record<string, unknown>, caller = technician) =>
  caller.change('POST', `/tickets/${ticket.id}/picks`, ticket.version, { quantity: 1, purpose: 'fit', ...body });

async function ok(answer: Promise<{ status: number; body: TicketView }>): Promise<TicketView> {
  const { status, body } = await answer;
  if (status !== 200) throw new Error(JSON.stringify(body));
  return body;
}

async function refusal(answer: Promise<{ status: number; body: unknown }>): Promise<Problem> {
  const { body } = await answer;
  return body as Problem;
}

const SOUND: Place[] = [
  { position: 'AUG-PIN', place: 1, partText: '70-412B', condition: 'sound' },
  { position: 'AUG-PIN', place: 2, partText: '70 412b', condition: 'sound' },
  { position: 'BELT', place: 1, partText: '80-002', condition: 'worn' },
];

/** A ticket whose unit was built in March 2017, inspected with the given finding. */
async function inParts(found: Place[], serial: string): Promise<TicketView> {
  let ticket = await shop.newTicket(serial);
  ticket = await ok(move(ticket, 'inspection'));
  ticket = await ok(record(ticket, 'found', found));
  ticket = await ok(move(ticket, 'parts-selection'));
  const yes = { by: 'Ole Brand', how: 'phone', amountMinor: 50_000 };
  return ok(technician.change('POST', `/tickets/${ticket.id}/authorisation`, ticket.version, yes));
}

const SHEARED: Place[] = [{ position: 'AUG-PIN', place: 1, condition: 'sheared' }, ...SOUND.slice(1)];
const allSafe = (ticket: TicketView) =>
  technician.change('PUT', `/tickets/${ticket.id}/safety`, ticket.version, {
    checks: SAFETY_POINTS.map(({ id }) => id),
  });

async function inRepair(serial: string): Promise<TicketView> {
  let ticket = await inParts(SHEARED, serial);
  ticket = await ok(pick(ticket, { position: 'AUG-PIN', partText: '70-412B' }));
  ticket = await ok(move(ticket, 'repair'));
  return ok(allSafe(ticket));
}

describe('the gates of a ticket', () => {
  it('keep a unit in intake until its line and its serial number, or why there is none, are recorded', async () => {
    const ticket = await shop.newTicket(null, { lineCode: null, modelNumber: null });
    const closed = await refusal(move(ticket, 'inspection'));
    expect(closed).toMatchObject({ status: 409, type: 'gate-closed' });
    expect(closed.missing).toEqual([
      'Record which product line the unit belongs to.',
      'Record the serial number, or why there is none to read.',
    ]);
    const identity = { lineCode: 'SNOW-2', modelNumber: null, serial: null, serialAbsent: 'plate painted over' };
    await technician.change('PUT', `/units/${ticket.unit.id}/identity`, ticket.unit.version, identity);
    const now = (await technician.get(`/tickets/${ticket.id}`)).body;
    expect((await ok(move(now, 'inspection'))).stage).toBe('inspection');
  });

  it('keep it in inspection until every place was looked at or left out with a reason', async () => {
    let ticket = await ok(move(await shop.newTicket('17030001'), 'inspection'));
    ticket = await ok(record(ticket, 'found', SOUND.slice(0, 1)));
    const closed = await refusal(move(ticket, 'parts-selection'));
    expect(closed.missing).toEqual([
      'Auger pin: record what is in right, or leave it out with a reason.',
      'Belt: record what is in belt, or leave it out with a reason.',
    ]);
    ticket = await ok(
      record(ticket, 'found', [
        SOUND[1]!,
        { position: 'BELT', place: 1, leftOutWhy: 'behind the housing, not part of this job' },
      ]),
    );
    expect((await ok(move(ticket, 'parts-selection'))).stage).toBe('parts-selection');
  });

  it('keep it in parts selection until each position to be worked on has a part', async () => {
    let ticket = await inParts(SHEARED, '17030002');
    expect((await refusal(move(ticket, 'repair'))).missing).toEqual(['Auger pin: pick the part that is to be fitted.']);
    ticket = await ok(pick(ticket, { position: 'AUG-PIN', partText: '70-412B/P10' }));
    expect(ticket.picks).toMatchObject([{ verdict: 'right', priceMinor: 275, state: 'picked' }]);
    expect((await ok(move(ticket, 'repair'))).stage).toBe('repair');
  });

  it('keep it in parts selection while the build date leaves the ruling open, until evidence settles it', async () => {
    const open = await shop.newTicket(null, { serialAbsent: 'plate gone' });
    let ticket = await ok(move(open, 'inspection'));
    ticket = await ok(record(ticket, 'found', SHEARED));
    ticket = await ok(move(ticket, 'parts-selection'));
    expect(ticket.unit.buildDates.needed).toBe(true);
    expect((await refusal(move(ticket, 'repair'))).missing).toContain(
      'Auger pin: the ruling is not settled; find out more, or ask a manager.',
    );
    const evidence = { kind: 'printed-date', date: '2017-03' };
    const unit = await technician.change('POST', `/units/${ticket.unit.id}/evidence`, ticket.unit.version, {
      evidence,
    });
    expect(unit.status).toBe(200);
    ticket = (await technician.get(`/tickets/${ticket.id}`)).body;
    expect(ticket.unit.buildDates).toMatchObject({ needed: false, days: [{ from: '2017-03-01', to: '2017-04-01' }] });
    ticket = await ok(pick(ticket, { position: 'AUG-PIN', partText: '70-412B' }));
    const yes = { by: 'Ole Brand', how: 'phone', amountMinor: 275 };
    ticket = await ok(technician.change('POST', `/tickets/${ticket.id}/authorisation`, ticket.version, yes));
    expect((await ok(move(ticket, 'repair'))).stage).toBe('repair');
  });

  it("let a part that is neither right nor allowed through on a manager's exception alone", async () => {
    let ticket = await inParts(SHEARED, '17030003');
    const wrong = { position: 'AUG-PIN', partText: '70-412A' };
    expect(await refusal(pick(ticket, wrong))).toMatchObject({
      status: 409,
      type: 'conflict',
      field: 'exceptionReason',
    });
    const reasoned = { ...wrong, exceptionReason: 'maker agreed by phone' };
    expect((await pick(ticket, reasoned)).status).toBe(403);
    ticket = await ok(pick(ticket, reasoned, manager));
    expect(ticket.picks[0]).toMatchObject({
      verdict: 'wrong',
      exception: { reason: 'maker agreed by phone', by: 'The manager' },
    });
    expect((await ok(move(ticket, 'repair'))).stage).toBe('repair');
  });

  it('keep it in repair until every picked part is fitted or back on the shelf', async () => {
    let ticket = await inRepair('17030004');
    ticket = await ok(pick(ticket, { position: 'BELT', partText: '80-001' }));
    expect((await refusal(move(ticket, 'handover'))).missing).toEqual([
      '70-412B: record where it was fitted, or return it to the shelf.',
      '80-001: record where it was fitted, or return it to the shelf.',
    ]);
    ticket = await ok(record(ticket, 'left', [{ position: 'AUG-PIN', place: 1, partText: '70412B' }]));
    expect(ticket.picks.map(({ state }) => state)).toEqual(['fitted', 'picked']);
    const back = `/tickets/${ticket.id}/picks/${ticket.picks[1]!.id}/return`;
    ticket = await ok(technician.change('POST', back, ticket.version));
    expect((await ok(move(ticket, 'handover'))).stage).toBe('handover');
  });

  it('keep it at handover while a flag is open, until a manager accepts it with a reason', async () => {
    let ticket = await ok(move(await shop.newTicket('17030005'), 'inspection'));
    ticket = await ok(
      record(ticket, 'found', [
        { position: 'AUG-PIN', place: 1, partText: '70-412B', condition: 'sound' },
        { position: 'AUG-PIN', place: 2, partText: '70-412A', condition: 'sound' },
        SOUND[2]!,
      ]),
    );
    expect(ticket.flags).toMatchObject([{ placeName: 'right', verdict: 'wrong', state: 'open' }]);
    ticket = await ok(move(ticket, 'parts-selection'));
    expect((await refusal(move(ticket, 'repair'))).missing).toEqual(['Auger pin: pick the part that is to be fitted.']);
    const flag = ticket.flags[0]!;
    const decide = { decision: 'accept', reason: 'owner wants to wait for the new pin', until: '2026-12-01' };
    const path = `/flags/${flag.id}/decide`;
    expect((await technician.change('POST', path, flag.version, decide)).status).toBe(403);
    expect((await manager.change('POST', path, flag.version, decide)).status).toBe(200);
    ticket = (await technician.get(`/tickets/${ticket.id}`)).body;
    ticket = await ok(move(ticket, 'repair'));
    ticket = await ok(allSafe(ticket));
    ticket = await ok(move(ticket, 'handover'));
    ticket = await ok(move(ticket, 'handed-over'));
    expect(ticket).toMatchObject({ handedOver: true, stage: 'handover' });
  });

  it('close again when the acceptance of a flag has run out', async () => {
    let ticket = await ok(move(await shop.newTicket('17030006'), 'inspection'));
    ticket = await ok(
      record(ticket, 'found', [{ position: 'AUG-PIN', place: 2, partText: '70-412A' }, SOUND[0]!, SOUND[2]!]),
    );
    const flag = ticket.flags[0]!;
    const decide = { decision: 'accept', reason: 'until the part is here', until: '2026-11-20' };
    await manager.change('POST', `/flags/${flag.id}/decide`, flag.version, decide);
    const today = shop.clock.today;
    expect((await technician.get(`/tickets/${ticket.id}`)).body.missing.at(-1)!.points).toEqual([]);
    shop.clock.today = today + 1;
    const later = (await technician.get(`/tickets/${ticket.id}`)).body;
    shop.clock.today = today;
    expect(later.missing.at(-1)!.points).toMatchObject([{ code: 'flag-open', position: 'AUG-PIN' }]);
  });

  it('hold no part back that the ruling allows beside the required one', async () => {
    let ticket = await inParts(
      [...SOUND.slice(0, 2), { position: 'BELT', place: 1, condition: 'missing' }],
      '17030007',
    );
    ticket = await ok(pick(ticket, { position: 'BELT', partText: '80-002' }));
    expect(ticket.picks[0]!.verdict).toBe('allowed');
    expect((await ok(move(ticket, 'repair'))).stage).toBe('repair');
  });
});

describe('the way of a ticket', () => {
  it('leads one stage forward or back, and back only with a reason', async () => {
    let ticket = await ok(move(await shop.newTicket('17030010'), 'inspection'));
    expect(await refusal(move(ticket, 'repair'))).toMatchObject({ status: 409, type: 'wrong-stage' });
    expect(await refusal(move(ticket, 'intake'))).toMatchObject({ status: 400, field: 'reason' });
    ticket = await ok(move(ticket, 'intake', 'wrong serial read'));
    expect(ticket.stage).toBe('intake');
    expect(ticket.history.at(-1)!.sentence).toBe('Moved back from inspection to intake: wrong serial read.');
  });

  it('stands still while the ticket is on hold', async () => {
    let ticket = await shop.newTicket('17030011');
    const hold = (reason: string | null) =>
      technician.change('POST', `/tickets/${ticket.id}/hold`, ticket.version, { reason });
    ticket = await ok(hold('waiting for the owner'));
    expect(ticket.onHold).toBe('waiting for the owner');
    expect(await refusal(move(ticket, 'inspection'))).toMatchObject({ status: 409, type: 'wrong-stage' });
    ticket = await ok(hold(null));
    expect((await ok(move(ticket, 'inspection'))).onHold).toBeNull();
  });

  it('ends with a cancellation that a technician may not give, and nothing is changed afterwards', async () => {
    let ticket = await shop.newTicket('17030012');
    const cancel = (caller: Caller) =>
      caller.change('POST', `/tickets/${ticket.id}/cancel`, ticket.version, { reason: 'owner sold it' });
    expect((await cancel(technician)).status).toBe(403);
    ticket = await ok(cancel(manager));
    expect(ticket.cancelled).toBe('owner sold it');
    expect(ticket.closedAt).not.toBeNull();
    expect(await refusal(move(ticket, 'inspection'))).toMatchObject({ status: 409, type: 'wrong-stage' });
    expect((await technician.ask('DELETE', `/tickets/${ticket.id}`)).status).toBe(404);
  });

  it('goes back to the bench when a manager sends a flag back', async () => {
    let ticket = await inRepair('17030013');
    ticket = await ok(record(ticket, 'left', [{ position: 'AUG-PIN', place: 1, partText: '70-499' }]));
    expect(ticket.flags).toMatchObject([{ verdict: 'wrong', part: { number: '70-499' }, state: 'open', severity: 5 }]);
    expect(ticket.flags[0]!.strength!.sentences[0]).toContain('Breaks later: it lets go at 2');
    expect(ticket.flags[0]!.sentence).toContain('70-499 does not belong here');
    const flag = ticket.flags[0]!;
    await manager.change('POST', `/flags/${flag.id}/decide`, flag.version, {
      decision: 'send-back',
      reason: 'take it out',
    });
    ticket = (await technician.get(`/tickets/${ticket.id}`)).body;
    expect(ticket.stage).toBe('parts-selection');
    expect(ticket.flags[0]!.state).toBe('sent-back');
  });

  it('is remembered whole: who did what, in order', async () => {
    let ticket = await inRepair('17030014');
    ticket = await ok(record(ticket, 'left', [{ position: 'AUG-PIN', place: 1, partText: '70-412B' }]));
    ticket = await ok(
      technician.change('PUT', `/tickets/${ticket.id}/labour`, ticket.version, {
        lines: [{ what: 'Work', minutes: 40, minor: 3_000 }],
      }),
    );
    const yes = { by: 'Ole Brand', how: 'phone', amountMinor: 5_000 };
    ticket = await ok(technician.change('POST', `/tickets/${ticket.id}/authorisation`, ticket.version, yes));
    ticket = await ok(pick(ticket, { position: 'AUG-PIN', partText: '70-412B', purpose: 'spare', quantity: 2 }));
    ticket = await ok(move(ticket, 'handover'));
    ticket = await ok(move(ticket, 'handed-over'));
    expect(ticket.history.map(({ kind }) => kind)).toEqual([
      'opened',
      'moved',
      'found',
      'moved',
      'estimate',
      'authorised',
      'picked',
      'moved',
      'safety',
      'left',
      'labour',
      'estimate',
      'authorised',
      'picked',
      'moved',
      'estimate',
      'handed-over',
    ]);
    expect(ticket.history.every(({ by }) => by !== null)).toBe(true);
    expect(ticket.totalMinor).toBe(3_000 + 3 * 275);
    expect(ticket.picks.map(({ state }) => state)).toEqual(['fitted', 'given']);
    expect(ticket.authorisation).toMatchObject({ ...yes, recordedBy: 'The technician' });
  });
});

describe('what stands in a place', () => {
  it('is recorded place by place: a mixture is a mixture, each with its own verdict', async () => {
    let ticket = await ok(move(await shop.newTicket('17030020'), 'inspection'));
    ticket = await ok(
      record(ticket, 'found', [
        { position: 'AUG-PIN', place: 1, partText: '70-412B', condition: 'sound' },
        { position: 'AUG-PIN', place: 2, partText: '70-499', condition: 'sound' },
        { position: 'BELT', place: 1, partText: '12-34X', condition: 'worn' },
      ]),
    );
    const [left, right, belt] = ticket.places.map(({ found }) => found!);
    expect(left!.verdict).toMatchObject({ verdict: 'right', rule: 'PIN-LATE', source: { number: 'PL-7' } });
    expect(right!.verdict).toMatchObject({ verdict: 'wrong', barredWhy: 'the gear case breaks first' });
    expect(belt).toMatchObject({
      part: { key: 'HOLM/1234X', name: 'Not in the catalogue' },
      verdict: { verdict: 'wrong' },
    });
  });

  it('tells how much later a wrong shear fastener lets go than the required one', async () => {
    let ticket = await ok(move(await shop.newTicket('17030021'), 'inspection'));
    ticket = await ok(
      record(ticket, 'found', [{ position: 'AUG-PIN', place: 1, partText: '70-499', condition: 'sound' }]),
    );
    const { strength } = ticket.places[0]!.found!.verdict!;
    // ISO 898-1: minimum tensile strength 1040 MPa for class 10.9, 520 MPa for class 5.8: twice as strong.
    expect(strength!.class).toBe('breaks-later');
    expect(strength!.ratio!.low).toBeCloseTo(2, 1);
  });

  it('can be told by its marks, and stays undecided while they leave parts with different verdicts', async () => {
    let ticket = await ok(move(await shop.newTicket('17030022'), 'inspection'));
    const marks = { headMarks: null, diameterMm: 8, lengthMm: 50, grooved: null, finish: null };
    ticket = await ok(record(ticket, 'found', [{ position: 'AUG-PIN', place: 1, marks, condition: 'sound' }]));
    const found = ticket.places[0]!.found!;
    expect(found.candidates.map(({ number }) => number).sort()).toEqual(['70-412A', '70-412B', '70-499']);
    expect(found.verdict!.verdict).toBe('undecided');
    const picked = {
      position: 'AUG-PIN',
      place: 1,
      marks,
      pickedCandidate: 'HOLM/70412B',
      toldBy: 'the bag it came in',
      condition: 'sound' as const,
    };
    ticket = await ok(record(ticket, 'found', [picked]));
    expect(ticket.places[0]!.found).toMatchObject({ part: { number: '70-412B' }, verdict: { verdict: 'right' } });
  });

  it('is refused with one sentence when it makes no sense', async () => {
    const ticket = await ok(move(await shop.newTicket('17030023'), 'inspection'));
    const detail = async (place: Place) => (await refusal(record(ticket, 'found', [place]))).detail;
    expect(await detail({ position: 'NONE', place: 1, condition: 'missing' })).toBe(
      "Snow thrower 2 has no position 'NONE'.",
    );
    expect(await detail({ position: 'BELT', place: 2, condition: 'missing' })).toBe(
      'Belt has 1 place(s), and no place 2.',
    );
    expect(await detail({ position: 'BELT', place: 1, partText: '80-001', condition: 'missing' })).toBe(
      'Belt: a missing part has neither number nor marks.',
    );
    expect(await detail({ position: 'BELT', place: 1, condition: 'sound' })).toBe(
      'Belt: record the part number or the marks, say that it is missing or sheared, or why the place is left out.',
    );
    expect(await detail({ position: 'BELT', place: 1, partText: '80§1' })).toContain('80§1');
  });

  it('is not recorded as left before the safety points are ticked', async () => {
    let ticket = await inParts(SHEARED, '17030024');
    ticket = await ok(pick(ticket, { position: 'AUG-PIN', partText: '70-412B' }));
    ticket = await ok(move(ticket, 'repair'));
    const left = [{ position: 'AUG-PIN', place: 1, partText: '70-412B' }];
    expect((await refusal(record(ticket, 'left', left))).detail).toBe(
      'Tick the safety points first, then record what was left.',
    );
    ticket = await ok(allSafe(ticket));
    expect((await ok(record(ticket, 'left', left))).places[0]!.left).toMatchObject({ fittedOn: '2026-11-20' });
  });

  it('is flagged at once when it is another part than the one picked, though it would be allowed', async () => {
    let ticket = await inParts(
      [...SOUND.slice(0, 2), { position: 'BELT', place: 1, condition: 'missing' }],
      '17030025',
    );
    ticket = await ok(pick(ticket, { position: 'BELT', partText: '80-001' }));
    ticket = await ok(allSafe(await ok(move(ticket, 'repair'))));
    ticket = await ok(record(ticket, 'left', [{ position: 'BELT', place: 1, partText: '80-002' }]));
    expect(ticket.flags).toMatchObject([
      { verdict: 'allowed', state: 'open', sentence: 'Belt, belt: 80-002 was fitted, picked was 80-001.' },
    ]);
    ticket = await ok(record(ticket, 'left', [{ position: 'BELT', place: 1, partText: '80-001' }]));
    expect(ticket.flags.map(({ state }) => state)).toEqual(['cleared']);
  });

  it('becomes what the unit holds, the newest record first, and greets the unit at its next visit', async () => {
    let ticket = await inRepair('17030026');
    ticket = await ok(record(ticket, 'left', [{ position: 'AUG-PIN', place: 1, partText: '70-412B' }]));
    const holds = await db.pool.query(
      `SELECT position_id, place, p.number, verdict FROM install i JOIN part p ON p.id = i.part_id
       WHERE unit_id = $1 ORDER BY position_id, place`,
      [ticket.unit.id],
    );
    expect(holds.rows).toEqual([
      { position_id: 1, place: 1, number: '70-412B', verdict: 'right' },
      { position_id: 1, place: 2, number: '70-412B', verdict: 'right' },
      { position_id: 2, place: 1, number: '80-002', verdict: 'allowed' },
    ]);
    ticket = await ok(move(await ok(move(ticket, 'handover')), 'handed-over'));
    const counter = await shop.as('counter');
    const again = await counter.ask('POST', '/tickets', { unitId: ticket.unit.id, complaint: 'again' });
    expect(again.status).toBe(201);
    expect(again.body.places[0]!.before).toMatchObject({ part: { number: '70-412B' }, ticket: ticket.number });
    expect(again.body.earlierTickets).toMatchObject([{ number: ticket.number, closedOn: '2026-11-20' }]);
    expect((await counter.ask('POST', '/tickets', { unitId: ticket.unit.id })).status).toBe(409);
    const another = await shop.newTicket('17030033');
    expect(another.places.map(({ before }) => before)).toEqual([null, null, null]);
  });
});

describe('the number of a ticket', () => {
  it('goes on after the ten-thousandth of a year', async () => {
    const { id } = await shop.newTicket('17039001');
    await db.pool.query(`UPDATE ticket SET number = '26-9998' WHERE id = $1`, [id]);
    const next = async (serial: string) => (await shop.newTicket(serial)).number;
    const numbers = [await next('17039002'), await next('17039003'), await next('17039004')];
    expect(numbers).toEqual(['26-9999', '26-10000', '26-10001']);
  });
});

describe('the version of a ticket', () => {
  it('must be named by every change', async () => {
    const ticket = await shop.newTicket('17030030');
    const answer = await technician.ask<Problem>('PATCH', `/tickets/${ticket.id}`, { complaint: 'x' });
    expect([answer.status, answer.body.type]).toEqual([428, 'version-missing']);
  });

  it('refuses a stale change with the present state, and changes nothing', async () => {
    const ticket = await shop.newTicket('17030031');
    const first = await technician.change('PATCH', `/tickets/${ticket.id}`, ticket.version, { complaint: 'first' });
    expect(first.headers.get('etag')).toBe(`"${ticket.version + 1}"`);
    const stale = await technician.change<Problem>('PATCH', `/tickets/${ticket.id}`, ticket.version, {
      complaint: 'second',
    });
    expect(stale.status).toBe(412);
    expect(stale.body.current).toMatchObject({ complaint: 'first', version: ticket.version + 1 });
    expect((await technician.get(`/tickets/${ticket.id}`)).body.complaint).toBe('first');
  });

  it('lets exactly one of many changes made at once through', async () => {
    const ticket = await shop.newTicket('17030032');
    const all = await Promise.all(
      Array.from({ length: 8 }, (_, n) =>
        technician.change('PATCH', `/tickets/${ticket.id}`, ticket.version, { complaint: `change ${n}` }),
      ),
    );
    expect(all.map(({ status }) => status).sort()).toEqual([200, ...Array<number>(7).fill(412)]);
    const now = (await technician.get(`/tickets/${ticket.id}`)).body;
    expect(now.version).toBe(ticket.version + 1);
    expect(now.history.filter(({ kind }) => kind === 'tag')).toHaveLength(1);
  });
});
