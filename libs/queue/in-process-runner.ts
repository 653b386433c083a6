import type { Store } from '../usecases';
import { runJob, UnknownJob, type Handlers } from './jobs';
import { repeat, type Running } from './repeat';

const LEASE_SECONDS = 60;
const LOOK_EVERY_MS = 1_000;

/**
 * Answers bells inside this process, several at once. The same outbox and chunk tables as with a queue: a process that
 * dies gives its bells back when their lease runs out.
 */
export function startInProcess(
  store: Pick<Store, 'outbox' | 'hints'>,
  handlers: Handlers,
  { lanes, onError }: { lanes: number; onError: (error: unknown) => void },
): Running {
  const turn = async (): Promise<boolean> => {
    const [bell] = await store.outbox.claim(1, LEASE_SECONDS);
    if (!bell) return false;
    try {
      await runJob(handlers, bell.topic, bell.payload);
    } catch (error) {
      if (!(error instanceof UnknownJob)) {
        await store.outbox.giveBack([bell.id]).catch(() => undefined);
        throw error;
      }
      onError(error);
    }
    await store.outbox.markDispatched([bell.id]);
    return true;
  };
  const loops = Array.from({ length: lanes }, () => repeat(turn, { everyMs: LOOK_EVERY_MS, onError }));
  const stop = store.hints.follow('bell', () => loops.forEach((loop) => loop.nudge()));
  return {
    async close() {
      stop();
      await Promise.all(loops.map((loop) => loop.close()));
    },
  };
}
