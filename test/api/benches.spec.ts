import { array, assert, asyncProperty, constantFrom, nat, record, type Arbitrary } from 'fast-check';
import type { BenchLists, Board, MyBench, Problem, TicketView } from '../../libs/contracts';
import { withDatabase } from '../../libs/testing';
import { ApiShop, type Answer } from './api-shop';

const db = withDatabase();
let shop: ApiShop;
const [B1, B3, B4] = [1, 3, 4];

beforeAll(async () => {
  shop = await ApiShop.open(db);
  await db.pool.query(
    `INSERT INTO bench (id, location_id, code, name) VALUES (3, 1, 'B3', 'Drive'), (4, 1, 'B4', 'Saws')`,
  );
}, 300_000);

type Move = { from: number | null; to: number | null; before?: number | null };
const move = async (id: number, body: Move): Promise<Answer<BenchLists & Problem>> =>
  (await shop.as('manager')).ask('POST', `/tickets/${id}/bench`, body);
const lists = async (): Promise<BenchLists> => (await (await shop.as('manager')).get<BenchLists>('/bench-lists')).body;
const on = async (benchId: number): Promise<number[]> =>
  (await lists()).benches.find(({ id }) => id === benchId)!.tickets.map(({ id }) => id);
const opened = async (serial: string, benchId: number | null = null): Promise<TicketView> => {
  const { body } = await (
    await shop.as('counter')
  ).ask('POST', '/tickets', {
    owner: { name: 'Ole Brand' },
    unit: { lineCode: 'SNOW-2', modelNumber: 'S2', serial, serialAbsent: null },
    benchId,
  });
  return body;
};

describe('the list of a bench', () => {
  it('takes a new ticket at its end, and one that is moved where it is put', async () => {
    const a = await opened('17010001', B1);
    const b = await opened('17010002', B1);
    const c = await opened('17010003');
    expect(await on(B1)).toEqual([a.id, b.id]);
    expect((await lists()).unplaced.map(({ id }) => id)).toEqual([c.id]);

    expect((await move(c.id, { from: null, to: B1, before: b.id })).status).toBe(200);
    expect(await on(B1)).toEqual([a.id, c.id, b.id]);
    await move(b.id, { from: B1, to: B1, before: a.id });
    expect(await on(B1)).toEqual([b.id, a.id, c.id]);
    await move(b.id, { from: B1, to: B1 });
    expect(await on(B1)).toEqual([a.id, c.id, b.id]);
    await move(a.id, { from: B1, to: B3 });
    expect([await on(B1), await on(B3)]).toEqual([[c.id, b.id], [a.id]]);
  });

  it('leaves the version of a ticket alone when only the order is new, and writes another bench in its history', async () => {
    const technician = await shop.as('technician');
    const [first, second] = await on(B1);
    const before = await technician.get(`/tickets/${second}`);
    await move(second!, { from: B1, to: B1, before: first! });
    const same = await technician.get(`/tickets/${second}`);
    expect(same.body.version).toBe(before.body.version);
    expect(same.body.history).toHaveLength(before.body.history.length);

    await move(second!, { from: B1, to: B4 });
    const moved = await technician.get(`/tickets/${second}`);
    expect(moved.body.version).toBe(before.body.version + 1);
    expect(moved.body.history.at(-1)).toMatchObject({ kind: 'bench', sentence: 'Moved from bench B1 to bench B4.' });
    await move(second!, { from: B4, to: B1 });
  });

  it('follows the bench that is written on the tag', async () => {
    const counter = await shop.as('counter');
    const [first] = await on(B1);
    const { body } = await counter.get(`/tickets/${first}`);
    expect((await counter.change('PATCH', `/tickets/${first}`, body.version, { benchId: B3 })).status).toBe(200);
    expect(await on(B1)).not.toContain(first);
    expect((await on(B3)).at(-1)).toBe(first);
    const refused = await counter.change<Problem>('PATCH', `/tickets/${first}`, body.version + 2, { benchId: 2 });
    expect([refused.status, refused.body.field]).toEqual([400, 'benchId']);
  });

  it('refuses a bench of another location, a ticket before itself, and people who do not plan', async () => {
    const [first] = await on(B3);
    expect((await move(first!, { from: B3, to: 2 })).body).toMatchObject({ status: 400, field: 'to' });
    expect((await move(first!, { from: B3, to: B3, before: first! })).body).toMatchObject({ status: 400 });
    expect((await move(999_999, { from: null, to: B3 })).status).toBe(404);
    const technician = await shop.as('technician');
    expect((await technician.ask('POST', `/tickets/${first}/bench`, { from: B3, to: B1 })).status).toBe(403);
  });

  it('tells the one who comes late, with the lists as they stand', async () => {
    const [first] = await on(B3);
    await move(first!, { from: B3, to: B4 });
    const late = await move(first!, { from: B3, to: B1 });
    expect(late.status).toBe(412);
    expect(late.body.detail).toContain('was moved by somebody else meanwhile');
    const seen = (late.body as unknown as { current: BenchLists }).current.benches.find(({ id }) => id === B4)!;
    expect(seen.tickets.map(({ id }) => id)).toContain(first);
    const gone = await move(first!, { from: B4, to: B4, before: 999_999 });
    expect(gone.status).toBe(412);
  });

  it('counts the open minutes against the day, those on hold apart, and those without minutes', async () => {
    const manager = await shop.as('manager');
    const work = await opened('17010009', B4);
    await manager.change('PUT', `/tickets/${work.id}/labour`, work.version, {
      lines: [{ what: 'Seized bolt', minutes: 90, minor: 9_600 }],
    });
    const { version } = (await lists()).benches.find(({ id }) => id === B4)!;
    const day = (on: number, dayMinutes: number, bench = B4) =>
      manager.change<BenchLists>('PATCH', `/benches/${bench}`, on, { dayMinutes });
    expect((await day(version, 300)).status).toBe(200);
    const load = async () => (await lists()).benches.find(({ id }) => id === B4)!.load;
    const before = await load();
    expect(before).toMatchObject({ dayMinutes: 300, openMinutes: 90, onHoldMinutes: 0 });
    await manager.change('POST', `/tickets/${work.id}/hold`, work.version + 1, { reason: 'waits for a part' });
    expect(await load()).toEqual({ ...before, openMinutes: 0, onHoldMinutes: 90 });
    expect((await day(version + 1, 1_441)).status).toBe(400);
    expect((await day(1, 60, 2)).status).toBe(404);
    expect((await day(version, 60)).status).toBe(412);
    expect((await load()).dayMinutes).toBe(300);
  });
});

describe('my bench', () => {
  it('is chosen once, and shows its list with what each ticket still lacks', async () => {
    const technician = await shop.as('technician');
    expect((await technician.get<MyBench>('/my-bench')).body).toMatchObject({ bench: null, jobs: [] });
    const { body } = await technician.ask<MyBench>('PUT', '/my-bench', { benchId: B3 });
    expect(body.bench).toMatchObject({ id: B3, code: 'B3' });
    const bare = await opened('17010010', B3);
    const mine = (await technician.get<MyBench>('/my-bench')).body;
    expect(mine.jobs.map(({ id }) => id)).toEqual(await on(B3));
    expect(mine.jobs.find(({ id }) => id === bare.id)).toMatchObject({ stage: 'intake', missing: [] });
    expect((await technician.ask('PUT', '/my-bench', { benchId: 2 })).status).toBe(400);
    await technician.ask('PUT', '/my-bench', { benchId: null });
  });
});

describe('people who move the same tickets at the same time', () => {
  const benches = [B1, B3, B4];
  const ids: number[] = [];
  const moves: Arbitrary<{ ticket: number; to: number; before: number }[]> = array(
    record({ ticket: nat(5), to: constantFrom(...benches), before: nat(6) }),
    { minLength: 2, maxLength: 12 },
  );

  beforeAll(async () => {
    for (let n = 0; n < 6; n++) ids.push((await opened(`1801010${n}`)).id);
  });

  const everywhere = async (): Promise<number[]> => {
    const { benches: all, unplaced } = await lists();
    return [...all.flatMap(({ tickets }) => tickets), ...unplaced].map(({ id }) => id);
  };

  it('never lose one and never have one twice, whatever the order their moves arrive in', async () => {
    const before = (await everywhere()).sort();
    await assert(
      asyncProperty(moves, async (all) => {
        const { benches: seen } = await lists();
        const benchOf = (id: number) => seen.find(({ tickets }) => tickets.some((one) => one.id === id))?.id ?? null;
        const answers = await Promise.all(
          all.map(({ ticket, to, before: at }) =>
            move(ids[ticket]!, {
              from: benchOf(ids[ticket]!),
              to,
              before: at === 6 || at === ticket ? null : ids[at]!,
            }),
          ),
        );
        for (const { status } of answers) expect([200, 412]).toContain(status);
        expect((await everywhere()).sort()).toEqual(before);
        const ranks = await db.pool.query<{ n: number; different: number }>(
          `SELECT count(*)::int AS n, count(DISTINCT (bench_id, bench_rank))::int AS different
           FROM ticket WHERE closed_at IS NULL AND bench_id IS NOT NULL`,
        );
        expect(ranks.rows[0]!.different).toBe(ranks.rows[0]!.n);
      }),
      { numRuns: 25 },
    );
  }, 120_000);

  it('let one of two have it when both send the same ticket to different benches', async () => {
    for (const from of [null, B1, B3]) {
      const id = ids[0]!;
      const at = (await lists()).benches.find(({ tickets }) => tickets.some((one) => one.id === id))?.id ?? null;
      if (at !== from) await move(id, { from: at, to: from });
      const targets = benches.filter((bench) => bench !== from).slice(0, 2);
      const answers = await Promise.all(targets.map((to) => move(id, { from, to })));
      expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
      const won = targets[answers.findIndex(({ status }) => status === 200)]!;
      expect(await on(won)).toContain(id);
    }
  });

  it('find room between two neighbours however often something is put there', async () => {
    const [a, b, c, d] = ids as [number, number, number, number];
    for (const id of [a, b, c, d]) {
      const at = (await lists()).benches.find(({ tickets }) => tickets.some((one) => one.id === id))?.id ?? null;
      await move(id, { from: at, to: B4 });
    }
    // Each round halves the gap before d; after twenty the list is numbered anew.
    for (let n = 0; n < 30; n++) {
      expect((await move(n % 2 === 0 ? b : c, { from: B4, to: B4, before: d })).status).toBe(200);
    }
    const order = (await on(B4)).filter((id) => [a, b, c, d].includes(id));
    expect(order).toEqual([a, b, c, d]);
  });
});

describe('the board', () => {
  it('shows the tickets of one owner alone, and names the owners it has tickets of', async () => {
    const counter = await shop.as('counter');
    await opened('17030777');
    const mine = await counter.ask('POST', '/tickets', {
      owner: { name: 'Zora Quill', phone: '0000 555 0190' },
      unit: { lineCode: null, modelNumber: null, serial: '1', serialAbsent: null },
    });
    const whole = (await counter.get<Board>('/board')).body;
    const ids = ({ stages }: Board) => stages.flatMap(({ tickets }) => tickets.map(({ id }) => id));
    const zora = whole.owners.find(({ name }) => name === 'Zora Quill')!;
    expect(zora.id).toBe(mine.body.owner.id);
    expect(ids(whole).length).toBeGreaterThan(1);
    expect(ids((await counter.get<Board>(`/board?owner=${zora.id}`)).body)).toEqual([mine.body.id]);
    await (
      await shop.as('manager')
    ).change('POST', `/tickets/${mine.body.id}/cancel`, mine.body.version, {
      reason: 'came by mistake',
    });
    expect((await counter.get<Board>('/board')).body.owners.map(({ name }) => name)).not.toContain('Zora Quill');
  });
});
