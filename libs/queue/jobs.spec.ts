import { handlersByJob, jobId, runJob, UnknownJob, type Handler } from './jobs';

const nothing = (): Promise<void> => Promise.resolve();
const all: readonly Handler[] = [
  { job: 'plan-chunks', run: nothing },
  { job: 'judge-chunk', run: nothing },
];

describe('the handlers of a worker', () => {
  it('must be one for each job: none or two are refused in one sentence', () => {
    expect(handlersByJob(all).size).toBe(2);
    expect(() => handlersByJob(all.slice(1))).toThrow("The job 'plan-chunks' has no handler; it must have one.");
    expect(() => handlersByJob([...all, all[1]!])).toThrow("The job 'judge-chunk' has two handlers; it must have one.");
  });

  it('are given the payload once it has been looked at', async () => {
    const seen: unknown[] = [];
    const handlers = handlersByJob([
      all[0]!,
      { job: 'judge-chunk', run: (payload) => Promise.resolve(void seen.push(payload)) },
    ]);
    await runJob(handlers, 'judge-chunk', { recheckId: 4, n: 0 });
    expect(seen).toEqual([{ recheckId: 4, n: 0 }]);
    await expect(runJob(handlers, 'judge-chunk', { recheckId: 4 })).rejects.toThrow(UnknownJob);
    await expect(runJob(handlers, 'polish', {})).rejects.toThrow(UnknownJob);
  });
});

describe('the id of a job', () => {
  it('tells recheck, chunk and bell, and holds no colon', () => {
    expect(jobId('judge-chunk', { recheckId: 4, n: 17 }, 230)).toBe('recheck-4-chunk-17-try-230');
    expect(jobId('plan-chunks', { recheckId: 4 }, 231)).toBe('recheck-4-plan-chunks-try-231');
  });
});
