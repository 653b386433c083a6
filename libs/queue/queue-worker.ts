import { UnrecoverableError, Worker } from 'bullmq';
import { runJob, UnknownJob, type Handlers } from './jobs';
import type { Running } from './repeat';
import { PREFIX, QUEUE, WORKER_SETTINGS } from './settings';

/** Answers bells that come through the queue, `concurrency` at once. Closing waits for those under way. */
export function startQueueWorker(
  redisUrl: string,
  handlers: Handlers,
  { concurrency, onError }: { concurrency: number; onError: (error: unknown) => void },
): Running {
  const worker = new Worker(
    QUEUE,
    async ({ name, data }) => {
      try {
        await runJob(handlers, name, data);
      } catch (error) {
        if (error instanceof UnknownJob) throw new UnrecoverableError(error.message);
        throw error;
      }
    },
    { connection: { url: redisUrl, maxRetriesPerRequest: null }, prefix: PREFIX, concurrency, ...WORKER_SETTINGS },
  );
  worker.on('error', onError);
  worker.on('failed', (_job, error) => onError(error));
  return { close: () => worker.close() };
}
