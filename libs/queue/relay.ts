import { Queue } from 'bullmq';
import type { Store } from '../usecases';
import { jobId } from './jobs';
import { repeat, type Running } from './repeat';
import { JOB_SETTINGS, PREFIX, QUEUE } from './settings';

const LEASE_SECONDS = 10;
const LOOK_EVERY_MS = 1_000;
const BELLS_A_TURN = 50;
/** Adding to a queue whose Redis is away never returns; the late add that lands after all queues the same job id. */
const PATIENCE_MS = 5_000;

/** Carries bells from the outbox to the queue. Dying between the two rings a bell twice, which does no harm. */
export function startRelay(
  store: Pick<Store, 'outbox' | 'hints'>,
  redisUrl: string,
  onError: (error: unknown) => void,
): Running {
  const queue = new Queue(QUEUE, { connection: { url: redisUrl }, prefix: PREFIX, defaultJobOptions: JOB_SETTINGS });
  queue.on('error', onError);
  const loop = repeat(() => relayTurn(store, (jobs) => queue.addBulk([...jobs])), { everyMs: LOOK_EVERY_MS, onError });
  const stop = store.hints.follow('bell', () => loop.nudge());
  return {
    async close() {
      stop();
      await loop.close();
      await queue.close().catch(onError);
    },
  };
}

interface QueuedJob {
  readonly name: string;
  readonly data: unknown;
  readonly opts: { readonly jobId: string };
}

/**
 * Claims some bells, queues them and marks them as rung; false when there was none. Stopped anywhere in between, the
 * bells are rung again once their lease has run out.
 */
export async function relayTurn(
  store: Pick<Store, 'outbox'>,
  add: (jobs: readonly QueuedJob[]) => Promise<unknown>,
): Promise<boolean> {
  const bells = await store.outbox.claim(BELLS_A_TURN, LEASE_SECONDS);
  if (bells.length === 0) return false;
  const ids = bells.map(({ id }) => id);
  try {
    const jobs = bells.map(({ id, topic, payload }) => ({
      name: topic,
      data: payload,
      opts: { jobId: jobId(topic, payload, id) },
    }));
    await withinPatience(add(jobs));
  } catch (error) {
    await store.outbox.giveBack(ids);
    throw error;
  }
  await store.outbox.markDispatched(ids);
  return true;
}

async function withinPatience<T>(work: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const tooLate = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('the queue did not answer in time')), PATIENCE_MS);
  });
  // A failure that comes after the patience has run out has been told already.
  work.catch(() => undefined);
  try {
    return await Promise.race([work, tooLate]);
  } finally {
    clearTimeout(timer);
  }
}
