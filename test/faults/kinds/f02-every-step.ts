import { StepStore } from '../step-store';
import type { Fault, FaultPlan, Tally } from '../fault';
import { checkNothingLost, checkStillAlive } from '../nothing-lost';
import { SCENE_SEED } from '../disturb';
import { look, publish, setScene, type Scene } from '../scene';
import { judgeChunk, planChunks, publishBulletin, sweepRechecks } from '../../../libs/usecases';
import { handlersByJob, relayTurn, runJob } from '../../../libs/queue';
import { handlersOn } from '../../../apps/worker/src/handlers';
import { manager } from '../../recheck/small-shop';
import type { House } from '../house';

const UNITS = 3;
const STEPS = ['publish', 'relay', 'plan', 'judge'] as const;
/** How the call that puts a bell into the queue can end. */
const QUEUE_STOPS = ['refused', 'taken and not told', 'no answer'] as const;
type QueueStop = (typeof QUEUE_STOPS)[number];
type Step = (typeof STEPS)[number];

/**
 * F2: the line to the database ends before or after the k-th statement of a step, for every k until the step goes
 * through untouched; once, and for good until the step has given up. The relay's calls to the queue are stopped too:
 * before they get there, after they got there, and without ever an answer.
 */
export const everyStep: Fault = {
  id: 'F2',
  title: 'stopped before and after every statement',
  full: 1,
  short: 0.06,
  async run(plan, tally) {
    const steps = await StepStore.open(plan.house.url);
    const stride = Math.max(1, Math.round(1 / plan.dose));
    try {
      for (const step of STEPS) {
        let last = 0;
        for (let k = 1 + plan.draw.below(stride); await stopAt(plan, tally, steps, step, k); k += stride) last = k;
        // A step of few statements may have been strode over.
        if (last === 0 && (await stopAt(plan, tally, steps, step, 1))) last = 1;
        tally.check(last > 0, `no statement of '${step}' was struck`);
        tally.say(`${step}: K to ${last}`);
      }
      for (const how of QUEUE_STOPS) {
        await stopAtQueue(plan, tally, how, 1);
        // The relay waits seconds for an answer; three times in a row is for the long form.
        if (plan.timed || how !== 'no answer') await stopAtQueue(plan, tally, how, 3);
      }
      tally.say(`queue: ${QUEUE_STOPS.length} ways, once and three times`);
    } finally {
      await steps.close();
    }
    await plan.house.work('alone');
    await checkStillAlive(plan, tally);
  },
};

/** The four ways to stop at one statement; false when the step has no such statement any more. */
async function stopAt(plan: FaultPlan, tally: Tally, steps: StepStore, step: Step, k: number): Promise<boolean> {
  for (const when of ['before', 'after'] as const) {
    for (const lasting of [false, true]) {
      const scene = await setScene(plan.house, UNITS, SCENE_SEED);
      const struck = await runStep(plan.house, steps, step, scene, () => steps.arm({ k, when, lasting }));
      if (!struck) return false;
      tally.struck(true);
      await recover(plan, tally, scene);
    }
  }
  return true;
}

/**
 * The relay's call to the queue ends in that way so many times, then goes through. A bell is in the queue at least once
 * under one and the same id however often it was rung, and is marked as rung only after that.
 */
async function stopAtQueue(plan: FaultPlan, tally: Tally, how: QueueStop, times: number): Promise<void> {
  const { house } = plan;
  const { store } = house.shop;
  const scene = await setScene(house, UNITS, SCENE_SEED);
  const recheckId = await publish(house, scene);
  const queued = new Set<string>();
  let calls = 0;
  const add = (jobs: readonly { readonly opts: { readonly jobId: string } }[]): Promise<void> => {
    const stopped = ++calls <= times;
    if (!stopped || how === 'taken and not told') jobs.forEach(({ opts }) => queued.add(opts.jobId));
    if (!stopped) return Promise.resolve();
    return how === 'no answer' ? new Promise(() => undefined) : Promise.reject(new Error('the line to Redis was cut'));
  };
  for (let turn = 0; turn < times; turn++) {
    await passTime(house);
    const failed = await relayTurn(store, add).then(
      () => false,
      () => true,
    );
    tally.struck(failed);
  }
  tally.check((await unrung(house, recheckId)) === 1, `a bell counts as rung though the queue was ${how}`);
  await passTime(house);
  await relayTurn(store, add);
  tally.check((await unrung(house, recheckId)) === 0, `a bell was not rung again after the queue was ${how}`);
  const ids = [...queued].filter((id) => id.startsWith(`recheck-${recheckId}-`));
  tally.check(ids.length === 1, `the queue holds ${ids.length} jobs for one bell after it was ${how}`);
  await recover(plan, tally, scene);
}

async function unrung({ pool }: House, recheckId: number): Promise<number> {
  const { rows } = await pool.query<{ n: number }>(
    `SELECT count(*)::int AS n FROM outbox WHERE dispatched_at IS NULL AND (payload->>'recheckId')::int = $1`,
    [recheckId],
  );
  return rows[0]!.n;
}

/** Brings the scene up to the step, does the step with the fault armed; true when the fault struck. */
async function runStep(house: House, steps: StepStore, step: Step, scene: Scene, arm: () => void): Promise<boolean> {
  const { shop } = house;
  const ports = { store: steps.store, clock: shop.clock };
  const publishing = { id: scene.bulletinId, version: 1 };
  const whole = async () => {
    const published = await publishBulletin(shop.ports, manager, publishing);
    return published.ok ? published.value.recheckId : 0;
  };
  const recheckId = step === 'publish' ? 0 : await whole();
  if (step === 'judge') await planChunks(shop.ports, { recheckId });
  arm();
  const work: Record<Step, () => Promise<unknown>> = {
    publish: () => publishBulletin(ports, manager, publishing),
    relay: () => relayTurn(steps.store, () => Promise.resolve()),
    plan: () => planChunks(ports, { recheckId }),
    judge: () => judgeChunk(ports, { recheckId, n: 0 }),
  };
  await work[step]().catch(() => undefined);
  return steps.disarm();
}

/** What happens afterwards in any case: the person asks again, time passes, the sweeper looks, bells are answered. */
async function recover(plan: FaultPlan, tally: Tally, scene: Scene): Promise<void> {
  const { house } = plan;
  const { ports, store } = house.shop;
  const again = await publishBulletin(ports, manager, { id: scene.bulletinId, version: 1 });
  if (!again.ok) tally.check(again.refusal.code === 'already-done', `publishing again: ${again.refusal.detail}`);
  const recheckId = (await store.rechecks.ofSource(scene.bulletinId))!.id;
  const handlers = handlersByJob(handlersOn(ports));
  for (let turn = 0; turn < 10 && (await look(house, recheckId))?.state !== 'done'; turn++) {
    await passTime(house);
    await sweepRechecks(ports);
    for (const bell of await store.outbox.claim(50, 60)) {
      await runJob(handlers, bell.topic, bell.payload);
      await store.outbox.markDispatched([bell.id]);
    }
  }
  await passTime(house);
  for (const bell of await store.outbox.claim(50, 60)) await store.outbox.markDispatched([bell.id]);
  await checkNothingLost({ ...plan, patienceMs: 2_000 }, tally, scene, recheckId);
}

/** Leases run out, and what was planned is long overdue. */
async function passTime({ pool }: House): Promise<void> {
  await pool.query(`UPDATE recheck_chunk SET leased_until = now() - INTERVAL '1 second' WHERE state = 'waiting'`);
  await pool.query(`UPDATE outbox SET leased_until = now() - INTERVAL '1 second' WHERE dispatched_at IS NULL`);
  await pool.query(`UPDATE recheck SET created_at = now() - INTERVAL '1 minute' WHERE state = 'planned'`);
}
