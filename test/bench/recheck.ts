import { startWorker } from '../../apps/worker/src/start-worker';
import { startRedis } from '../../libs/testing';
import { figure, type BenchLine } from './bench-line';
import { BigShop } from './recheck/big-shop';
import { median, RecheckBench, round2 } from './recheck/recheck-bench';
import { WhichPart } from './recheck/which-part';
import { WorkerProcess } from './recheck/worker-process';

const ROWS = Number(process.env['REVRIGHT_BENCH_ROWS'] ?? 1_000_000);
const ROUNDS = Number(process.env['REVRIGHT_BENCH_ROUNDS'] ?? 3);
/** A second, larger shop, to see what grows with the table: takes minutes to fill. */
const LARGER_ROWS = Number(process.env['REVRIGHT_BENCH_LARGER_ROWS'] ?? 0);
const REACHES = [100, 1_000, 10_000, 100_000];
const MOST_MB = { atMost: 300 };
const LANES = 2;

/** Whole rechecks and bulletins of several reaches, through the queue and worker processes, on a crash-safe database. */
export const benches = {
  name: 'recheck',
  async *run(): AsyncGenerator<BenchLine> {
    const seen = yield* shopOf(ROWS, everyFigure);
    if (LARGER_ROWS > 0) yield* compared(seen, yield* shopOf(LARGER_ROWS, whatGrows));
  },
};

type Lines<T> = AsyncGenerator<BenchLine, T>;

/** What is held against a larger shop. */
interface Seen {
  readonly reaches: ReadonlyMap<number, number>;
  readonly peakMb: number;
}

interface Scene {
  readonly shop: BigShop;
  readonly bench: RecheckBench;
  readonly redisUrl: string;
  readonly worker: WorkerProcess;
}

/** With a queue of its own: one that knows the jobs of another shop would pass over those of the same numbers. */
async function* shopOf(rows: number, look: (scene: Scene) => Lines<Seen>): Lines<Seen> {
  const redis = await startRedis();
  const shop = await BigShop.open(rows);
  const worker = await WorkerProcess.start(shop.url, redis.url, LANES);
  try {
    return yield* look({ shop, bench: new RecheckBench(shop, ROUNDS), redisUrl: redis.url, worker });
  } finally {
    await worker.stop();
    await shop.close();
    await redis.stop();
  }
}

async function* everyFigure(scene: Scene): Lines<Seen> {
  const { bench, worker } = scene;
  const { lines, ms } = await bench.whole();
  yield* lines;
  const peakMb = worker.peakMb();
  yield figure('peak memory of the worker', peakMb, 'MB', MOST_MB);
  const reaches = yield* touching(scene);
  yield* await bench.firstCall(ms);
  if (ROWS >= 200_000) yield* await bench.changing(100_000);
  yield figure('peak memory of the worker after all bulletins', worker.peakMb(), 'MB', MOST_MB);
  yield* whichPart(scene);
  yield* workersCompared(scene);
  return { reaches, peakMb };
}

async function* whatGrows(scene: Scene): Lines<Seen> {
  const { lines } = await scene.bench.whole();
  yield* lines;
  const peakMb = scene.worker.peakMb();
  yield figure('peak memory of the worker', peakMb, 'MB', MOST_MB);
  return { reaches: yield* touching(scene), peakMb };
}

async function* touching({ shop, bench }: Scene): Lines<ReadonlyMap<number, number>> {
  const reaches = new Map<number, number>();
  for (const k of [...REACHES, shop.rows].filter((one) => one <= shop.rows)) {
    const { judged, ms } = await bench.reaching(k);
    reaches.set(k, ms);
    yield figure(`bulletin that reaches ${judged} of ${shop.rows} installs`, Math.round(ms), 'ms');
  }
  return reaches;
}

/** Time grows with what a bulletin reaches, not with the table; memory not at all. */
function* compared(small: Seen, large: Seen): Generator<BenchLine> {
  const times = LARGER_ROWS / ROWS;
  for (const k of REACHES) {
    const ratio = large.reaches.get(k)! / small.reaches.get(k)!;
    yield figure(`bulletin that reaches ${k} installs, in ${times} times the shop`, round2(ratio), 'times', {
      atMost: 1.5,
    });
  }
  const name = `peak memory of the worker, in ${times} times the shop`;
  yield figure(name, round2(large.peakMb / small.peakMb), 'times', { atMost: 1.2 });
}

async function* whichPart({ shop, bench }: Scene): Lines<void> {
  const route = await WhichPart.open(shop);
  try {
    yield await route.slowest('with nothing else to do', 1);
    let over = false;
    const rechecks = (async () => {
      while (!over) await bench.everything();
    })();
    yield await route.slowest('while a worker process rechecks everything', 1);
    over = true;
    await rechecks;
  } finally {
    await route.close();
  }
}

/** The same rechecks by one worker process, by two, and by a worker inside this process that needs no queue. */
async function* workersCompared({ shop, bench, redisUrl, worker }: Scene): Lines<void> {
  const alone: number[] = [];
  const together: number[] = [];
  for (let turn = 0; turn < 2; turn++) {
    alone.push(await bench.wholeMs());
    const second = await WorkerProcess.start(shop.url, redisUrl, LANES);
    together.push(await bench.wholeMs());
    await second.stop();
  }
  yield figure('two worker processes against one', round2(median(alone) / median(together)), 'times', { atLeast: 1.6 });
  await worker.stop();
  const config = { redisUrl: undefined, workerConcurrency: LANES, timeZone: 'UTC' };
  const within = await startWorker({ config, store: shop.store });
  const unqueued = await bench.wholeMs();
  await within.close();
  const share = Math.max(0, (1 - unqueued / median(alone)) * 100);
  yield figure('share of the queue in a whole recheck', Math.round(share), '%', { atMost: 5 });
}
