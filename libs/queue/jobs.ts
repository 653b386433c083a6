import { z } from 'zod';

/** Every kind of work that is not done in a request, with what it is told: ids only, the truth is in the database. */
export const JOBS = {
  'plan-chunks': z.strictObject({ recheckId: z.int().positive() }),
  'judge-chunk': z.strictObject({ recheckId: z.int().positive(), n: z.int().min(0) }),
} as const;

export type JobName = keyof typeof JOBS;
export type JobPayload<N extends JobName> = z.infer<(typeof JOBS)[N]>;

/** One job and what does it. */
export type Handler = { [N in JobName]: { readonly job: N; run(payload: JobPayload<N>): Promise<void> } }[JobName];

export type Handlers = ReadonlyMap<string, Handler>;

/** The handlers by job. Throws a sentence when a job has none or two, so that no work is left lying unnoticed. */
export function handlersByJob(handlers: readonly Handler[]): Handlers {
  const byJob = new Map<string, Handler>();
  for (const handler of handlers) {
    if (byJob.has(handler.job)) throw new Error(`The job '${handler.job}' has two handlers; it must have one.`);
    byJob.set(handler.job, handler);
  }
  for (const job of Object.keys(JOBS)) {
    if (!byJob.has(job)) throw new Error(`The job '${job}' has no handler; it must have one.`);
  }
  return byJob;
}

/** A bell that no handler can ever answer: trying again would not help. */
export class UnknownJob extends Error {}

/** Does the job, once its name and payload have been looked at. */
export async function runJob(handlers: Handlers, name: string, payload: unknown): Promise<void> {
  const handler = handlers.get(name);
  if (!handler) throw new UnknownJob(`there is no job '${name}'`);
  const read = JOBS[handler.job].safeParse(payload);
  if (!read.success) throw new UnknownJob(`the payload of '${name}' will not do: ${read.error.message}`);
  await (handler.run as (payload: unknown) => Promise<void>)(read.data);
}

/** The id under which a bell stands in the queue: ringing one bell twice queues one job. */
export function jobId(name: string, payload: unknown, bell: number): string {
  const { recheckId, n } = payload as { recheckId: number; n?: number };
  const what = name === 'judge-chunk' ? `chunk-${n}` : name;
  return `recheck-${recheckId}-${what}-try-${bell}`;
}
