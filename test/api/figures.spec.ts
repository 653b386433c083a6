import type { Figures, Problem } from '../../libs/contracts';
import { day } from '../../libs/day';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Caller } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
let manager: Caller;

/** Day number of a civil day, as units keep their build days. */
const n = (text: string): number => day(text);

/**
 * Six tickets taken in in October 2026, one of them at the far shop, one cancelled; one taken in in September. Counted
 * by hand below.
 */
async function fillBooks(): Promise<void> {
  await db.pool.query(`
    INSERT INTO owner (id, location_id, name) VALUES (1, 1, 'Ole Brand'), (2, 2, 'Far Away');
    INSERT INTO unit (id, owner_id, line_id, built, built_from, built_to) VALUES
      (1, 1, 1, '{[${n('2016-03-01')},${n('2016-04-01')})}', ${n('2016-03-01')}, ${n('2016-04-01')}),
      (2, 1, 1, '{[${n('2016-03-01')},${n('2016-04-02')})}', ${n('2016-03-01')}, ${n('2016-04-02')}),
      (3, 1, 1, '{[${n('2014-01-01')},${n('2014-02-01')}),[${n('2018-01-01')},${n('2018-02-01')})}', ${n('2014-01-01')}, ${n('2018-02-01')}),
      (4, 1, NULL, '{}', 0, 0),
      (5, 2, 1, '{[${n('2016-03-01')},${n('2016-03-02')})}', ${n('2016-03-01')}, ${n('2016-03-02')});
    INSERT INTO ticket (id, number, location_id, unit_id, owner_id, bench_id, bench_rank, opened_at, closed_at, cancel_reason) VALUES
      (1, 'T1', 1, 1, 1, 1, 1, '2026-10-01T00:00:00Z', '2026-10-05', NULL),
      (2, 'T2', 1, 1, 1, 1, 2, '2026-10-10T08:00:00Z', '2026-10-12', NULL),
      (3, 'T3', 1, 2, 1, 1, 3, '2026-10-31T23:59:59Z', NULL, NULL),
      (4, 'T4', 1, 3, 1, NULL, NULL, '2026-10-20T08:00:00Z', NULL, NULL),
      (5, 'T5', 1, 4, 1, 1, 5, '2026-10-21T08:00:00Z', '2026-10-22', 'not ours'),
      (6, 'T6', 2, 5, 2, 2, 6, '2026-10-21T08:00:00Z', NULL, NULL),
      (7, 'T7', 1, 4, 1, 1, 7, '2026-09-30T23:59:59Z', NULL, NULL);
    INSERT INTO place_record (ticket_id, unit_id, position_id, place, side, part_id) VALUES
      (1, 1, 1, 1, 'found', 3), (1, 1, 1, 1, 'left', 2), (1, 1, 1, 2, 'found', 3), (1, 1, 1, 2, 'left', 3),
      (2, 1, 1, 1, 'found', 2), (3, 2, 1, 1, 'found', 3), (3, 2, 2, 1, 'found', 4), (6, 5, 1, 1, 'found', 3);
    INSERT INTO flag (ticket_id, unit_id, position_id, place, part_id, verdict, severity, reason, state, opened_at) VALUES
      (1, 1, 1, 1, 3, 'wrong', 4, '{"required":"HOLM/70412B"}', 'cleared', '2026-10-02'),
      (1, 1, 1, 1, 3, 'wrong', 4, '{"required":"HOLM/70412B"}', 'accepted', '2026-10-03'),
      (3, 2, 1, 1, 3, 'outdated', 4, '{"required":"HOLM/70412B"}', 'open', '2026-11-01'),
      (3, 2, 2, 1, 4, 'undecided', 1, '{"required":null}', 'open', '2026-10-31'),
      (6, 5, 1, 1, 3, 'wrong', 4, '{"required":null}', 'open', '2026-10-22');
    INSERT INTO ticket_event (ticket_id, at, kind, data) VALUES
      (1, '2026-10-01T00:00:00Z', 'opened', '{}'),
      (1, '2026-10-01T02:00:00Z', 'moved', '{"from":"intake","to":"inspection"}'),
      (1, '2026-10-01T12:00:00Z', 'moved-back', '{"from":"inspection","to":"intake"}'),
      (1, '2026-10-01T16:00:00Z', 'moved', '{"from":"intake","to":"inspection"}'),
      (2, '2026-10-10T08:00:00Z', 'opened', '{}'),
      (2, '2026-10-10T08:30:00Z', 'found', '{}'),
      (2, '2026-10-10T17:00:00Z', 'moved', '{"from":"intake","to":"inspection"}'),
      (2, '2026-10-12T00:00:00Z', 'handed-over', '{}'),
      (7, '2026-09-30T23:00:00Z', 'opened', '{}'),
      (7, '2026-09-30T23:59:59Z', 'moved', '{"from":"intake","to":"inspection"}'),
      (6, '2026-10-21T08:00:00Z', 'opened', '{}'),
      (6, '2026-10-21T09:00:00Z', 'moved', '{"from":"intake","to":"inspection"}');
    INSERT INTO callback (unit_id, owner_id, state, opened_at, closed_at) VALUES
      (1, 1, 'settled', '2026-10-01', '2026-10-04'), (2, 1, 'settled', '2026-10-02', '2026-10-03T12:00:00Z'),
      (3, 1, 'withdrawn', '2026-10-30', '2026-10-31'), (1, 1, 'open', '2026-10-31', NULL),
      (3, 1, 'booked', '2026-09-30T23:59:59Z', NULL), (5, 2, 'settled', '2026-10-02', '2026-10-12');
  `);
}

beforeAll(async () => {
  shop = await ApiShop.open(db);
  manager = await shop.as('manager');
  await fillBooks();
}, 300_000);

const october = async (caller: Caller): Promise<Figures> =>
  (await caller.get<Figures>('/figures?from=2026-10-01&to=2026-11-01')).body;

describe('the figures of October, counted by hand', () => {
  it('flagged tickets by bench: cancelled and earlier ones are left out, a later flag counts', async () => {
    expect((await october(manager)).byBench).toEqual([
      { bench: 'Far bench', location: 'Far shop', tickets: 1, flagged: 1 },
      { bench: 'Snow', location: 'Main shop', tickets: 3, flagged: 2 },
      { bench: null, location: 'Main shop', tickets: 1, flagged: 0 },
    ]);
  });

  it('flagged places by part: a place found and left with the same part is one, one flagged twice is one', async () => {
    const parts = (await october(manager)).byPart;
    expect(parts.map(({ part, places, flagged }) => [part.number, places, flagged])).toEqual([
      ['70-499', 4, 3],
      ['80-001', 1, 1],
    ]);
  });

  it('callbacks by week: how those opened in it stand today', async () => {
    const weeks = (await october(manager)).callbacks;
    const zero = { opened: 0, done: 0, notNeeded: 0, waiting: 0, medianDays: null };
    expect(weeks).toEqual([
      // done after 3, 1.5 and 10 days
      { from: '2026-10-01', to: '2026-10-05', opened: 3, done: 3, notNeeded: 0, waiting: 0, medianDays: 3 },
      { from: '2026-10-05', to: '2026-10-12', ...zero },
      { from: '2026-10-12', to: '2026-10-19', ...zero },
      { from: '2026-10-19', to: '2026-10-26', ...zero },
      { from: '2026-10-26', to: '2026-11-01', opened: 2, done: 0, notNeeded: 1, waiting: 1, medianDays: null },
    ]);
  });

  it('hours in a stage: every stay that ended, the way back too', async () => {
    const { stages } = await october(manager);
    expect(stages).toEqual([
      // 1, 2, 4 and 9 hours: halfway between 2 and 4; nine tenths of the way is 0.7 of that from 4 to 9
      { stage: 'intake', stays: 4, medianHours: 3, longHours: 7.5 },
      { stage: 'inspection', stays: 1, medianHours: 10, longHours: 10 },
      { stage: 'parts-selection', stays: 0, medianHours: null, longHours: null },
      { stage: 'repair', stays: 0, medianHours: null, longHours: null },
      // from the move on 10 October, 17:00, to the handover at the end of the 11th
      { stage: 'handover', stays: 1, medianHours: 31, longHours: 31 },
    ]);
  });

  it('units whose build date is not settled: 31 days are, 32 are not; one of a cancelled ticket is not asked about', async () => {
    expect((await october(manager)).unsettled).toEqual([
      { line: 'Snow thrower 2', units: 4, settled: 2, longer: 1, severalRuns: 1, contradicted: 0 },
    ]);
    const september = await manager.get<Figures>('/figures?from=2026-09-01&to=2026-10-01');
    expect(september.body.unsettled).toEqual([
      { line: null, units: 1, settled: 0, longer: 0, severalRuns: 0, contradicted: 1 },
    ]);
  });

  it('wrong and outdated parts by the day they were flagged', async () => {
    const said = ({ wrongParts }: Figures) =>
      wrongParts.map((one) => [one.part.number, one.required?.number ?? null, one.verdict, one.places]);
    expect(said(await october(manager))).toEqual([
      ['70-499', '70-412B', 'wrong', 1],
      ['70-499', null, 'wrong', 1],
    ]);
    const november = await manager.get<Figures>('/figures?from=2026-11-01&to=2026-12-01');
    expect(said(november.body)).toEqual([['70-499', '70-412B', 'outdated', 1]]);
  });
});

describe('the figures', () => {
  it('show the counter nothing of another location', async () => {
    const seen = await october(await shop.as('counter'));
    expect(seen.byBench.map(({ location }) => location)).toEqual(['Main shop', 'Main shop']);
    expect(seen.byPart[0]).toMatchObject({ places: 3, flagged: 2 });
    expect(seen.callbacks[0]).toMatchObject({ opened: 2, medianDays: 2.3 });
    expect(seen.stages[0]).toMatchObject({ stays: 3, medianHours: 4 });
    expect(seen.unsettled[0]).toMatchObject({ units: 3 });
    expect(seen.wrongParts).toHaveLength(1);
  });

  it('are of the twelve months up to today where no days are named', async () => {
    const { body } = await manager.get<Figures>('/figures');
    expect([body.from, body.to]).toEqual(['2025-11-21', '2026-11-21']);
    expect(body.callbacks.map(({ opened }) => opened).reduce((sum, one) => sum + one)).toBe(6);
  });

  it('refuse days that end before they begin, and days that are none, naming the field', async () => {
    const back = await manager.get<Problem>('/figures?from=2026-10-02&to=2026-10-02');
    expect([back.status, back.body.field]).toEqual([400, 'to']);
    expect(back.body.detail).toContain("'to' must be later than 'from'");
    const ages = await manager.get<Problem>('/figures?from=0001-01-01&to=2026-10-02');
    expect([ages.status, ages.body.field]).toEqual([400, 'from']);
    expect((await manager.get('/figures?from=2026-02-30')).status).toBe(400);
  });
});
