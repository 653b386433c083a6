import { copyRows, scanQuery } from '../../libs/store';
import { startRedis } from '../../libs/testing';
import type { RecheckScope } from '../../libs/contracts';
import { orderRecheck, publishBulletin, saveBulletin, type RecheckRow } from '../../libs/usecases';
import type { FitRuleFile } from '../../libs/fit-rules';
import { bulletin, HeldClock, manager, rule } from '../recheck/small-shop';
import { finished, value } from '../recheck/wait';
import { figure, type BenchLine } from './bench-line';
import { BigShop, builtAt, lineCode, LINES, positionCode, POSITIONS } from './recheck/big-shop';
import { WorkerProcess } from './recheck/worker-process';

const ROWS = Number(process.env['REVRIGHT_BENCH_ROWS'] ?? 1_000_000);
const ROUNDS = Number(process.env['REVRIGHT_BENCH_ROUNDS'] ?? 3);
const EVERYTHING: RecheckScope = { everything: true, areas: [], ignoresLookBack: true };

/** Whole rechecks and bulletins of several reaches, through the queue and worker processes, on a crash-safe database. */
export const benches = {
  name: 'recheck',
  async run(): Promise<BenchLine[]> {
    const shop = await BigShop.open(ROWS);
    const redis = await startRedis();
    const workers = [await WorkerProcess.start(shop.url, redis.url, 2)];
    try {
      const bench = new RecheckBench(shop);
      const lines = await bench.whole();
      lines.push(figure('peak memory of the worker', workers[0]!.peakMb(), 'MB', { atMost: 300 }));
      lines.push(...(await bench.touching()));
      lines.push(...(await bench.firstCall()));
      lines.push(figure('peak memory of the worker after all bulletins', workers[0]!.peakMb(), 'MB', { atMost: 300 }));
      workers.push(await WorkerProcess.start(shop.url, redis.url, 2));
      lines.push(await bench.twoWorkers());
      return lines;
    } finally {
      await Promise.all(workers.map((worker) => worker.stop()));
      await redis.stop();
      await shop.close();
    }
  },
};

class RecheckBench {
  private readonly ports;
  private number = 0;
  private wholeMs = 0;

  constructor(private readonly shop: BigShop) {
    this.ports = { store: shop.store, clock: new HeldClock(Math.floor(Date.now() / 86_400_000)) };
  }

  /** Everything is judged again and next to nothing changes, against the bare reading of the same rows. */
  async whole(): Promise<BenchLine[]> {
    const first = await this.everything();
    const ratios: number[] = [];
    const times: number[] = [];
    const bare: number[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      bare.push(await this.bareCopy());
      times.push((await this.everything()).ms);
      ratios.push(times.at(-1)! / bare.at(-1)!);
    }
    this.wholeMs = median(times);
    return [
      figure(`bare COPY of ${ROWS} installs`, Math.round(median(bare)), 'ms'),
      figure(`recheck of ${ROWS} installs, ${first.row.changed} changed`, Math.round(first.ms), 'ms'),
      figure(`recheck of ${ROWS} installs, none changed`, Math.round(this.wholeMs), 'ms'),
      figure('installs judged end to end', Math.round((ROWS / this.wholeMs) * 1_000), 'installs/s'),
      figure('recheck with none changed against bare COPY', round2(median(ratios)), 'times', { atMost: 1.3 }),
    ];
  }

  /** Bulletins that reach k installs and change none. */
  async touching(): Promise<BenchLine[]> {
    const perPlace = ROWS / LINES / POSITIONS;
    const lines: BenchLine[] = [];
    for (const k of [100, 10_000, ROWS]) {
      if (k > ROWS) continue;
      const places = Math.max(1, Math.round(k / perPlace));
      const positions = Math.min(POSITIONS, places);
      const share = Math.min(1, k / (places * perPlace));
      const rules = Array.from({ length: Math.ceil(places / POSITIONS) }, (_, line) =>
        this.reaching(line, positions, share, { barred: [{ part: 'HOLM/NEVER', reason: 'breaks-later', note: '' }] }),
      );
      const times: number[] = [];
      let judged = 0;
      for (let round = 0; round < ROUNDS; round++) {
        const { row, ms } = await this.publish(rules.map((one) => ({ ...one, key: `${one.key}-${round}` })));
        times.push(ms);
        judged = row.judged;
      }
      lines.push(figure(`bulletin that reaches ${judged} of ${ROWS} installs`, Math.round(median(times)), 'ms'));
    }
    return lines;
  }

  /** A bulletin that changes all of about a thousand installs, until the first owner and until all are on the list. */
  async firstCall(): Promise<BenchLine[]> {
    const share = Math.min(1, 1_000 / (ROWS / LINES / POSITIONS));
    const begun = performance.now();
    let first = 0;
    const calls = async () =>
      (await this.shop.pool.query<{ n: number }>('SELECT count(*)::int AS n FROM callback')).rows[0]!.n;
    const before = await calls();
    const done = this.publish([this.reaching(1, 1, share, { required: 'HOLM/P9', action: 'call-back' })]);
    while (first === 0) if ((await calls()) > before) first = performance.now() - begun;
    const { row, ms } = await done;
    const what = `bulletin that changes ${row.changed} installs, until all ${row.callbacksOpened} calls`;
    return [
      figure(what, Math.round(ms), 'ms', { atMost: Math.round(0.05 * this.wholeMs) }),
      figure('first call on the list after publishing', Math.round(first), 'ms'),
    ];
  }

  async twoWorkers(): Promise<BenchLine> {
    const times: number[] = [];
    for (let round = 0; round < ROUNDS; round++) times.push((await this.everything()).ms);
    return figure('two worker processes against one', round2(this.wholeMs / median(times)), 'times', { atLeast: 1.6 });
  }

  private reaching(line: number, positions: number, share: number, more: Partial<FitRuleFile>): FitRuleFile {
    const codes = Array.from({ length: positions }, (_, position) => positionCode(position));
    const built = share >= 1 ? { from: null, to: null } : { from: builtAt(0), to: builtAt(share) };
    return rule(`FR-B${++this.number}`, { line: lineCode(line), positions: codes, built, ...more });
  }

  private async publish(opens: readonly FitRuleFile[]): Promise<Took> {
    const { id } = await value(saveBulletin(this.ports, manager, bulletin(`SB-${++this.number}`, opens)));
    const { recheckId } = await value(publishBulletin(this.ports, manager, { id, version: 1 }));
    return took(await finished(this.shop.store, recheckId));
  }

  private async everything(): Promise<Took> {
    const { recheckId } = await value(orderRecheck(this.ports, manager, EVERYTHING));
    return took(await finished(this.shop.store, recheckId));
  }

  private async bareCopy(): Promise<number> {
    const client = await this.shop.pool.connect();
    const choice = { scope: EVERYTHING, fromUnit: 1, toUnit: ROWS, lookBackFrom: null };
    const begun = performance.now();
    await copyRows(client, scanQuery(choice, 'UTC'), () => undefined);
    client.release();
    return performance.now() - begun;
  }
}

interface Took {
  readonly row: RecheckRow;
  /** From the order to the end, by the database's clock. */
  readonly ms: number;
}

const took = (row: RecheckRow): Took => ({ row, ms: row.finishedAt! - row.createdAt });

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;
const round2 = (value: number): number => Math.round(value * 100) / 100;
