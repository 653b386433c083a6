/** The one queue, and the prefix of all its keys. */
export const QUEUE = 'rechecks';
export const PREFIX = 'revright';

/**
 * Measured with this version of the queue, on workers killed in mid-work: with these a job is taken up again about ten
 * seconds after its worker died, however often that happens; with the usual ones it took a minute, and the second death
 * ended the job for good.
 */
export const WORKER_SETTINGS = { lockDuration: 10_000, stalledInterval: 5_000, maxStalledCount: 1_000 } as const;

/** Finished jobs are kept for a look, not for ever: by count and by age, or they would fill the memory. */
export const JOB_SETTINGS = {
  attempts: 8,
  backoff: { type: 'exponential', delay: 500 },
  removeOnComplete: { count: 1_000, age: 3_600 },
  removeOnFail: { count: 5_000, age: 24 * 3_600 },
} as const;
