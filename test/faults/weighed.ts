/** What a process holds, in MiB, right after everything that nothing points to was collected. */
export interface Weight {
  /** Of the language's own memory: what is still in use. */
  readonly heap: number;
  /** Buffers and the like, outside of it and in use. */
  readonly outside: number;
  /** What the machine has given the process, with what it keeps for later. */
  readonly resident: number;
}

/** What a process that was started with this file is told, to be weighed. */
export const WEIGH = 'weigh';

const MIB = 2 ** 20;

/** Twice, with a turn between: what waits for a finalizer goes with the second. */
async function weigh(): Promise<Weight> {
  for (let i = 0; i < 2; i++) {
    globalThis.gc!();
    await new Promise((done) => setImmediate(done));
  }
  const { heapUsed, external, rss } = process.memoryUsage();
  return { heap: heapUsed / MIB, outside: external / MIB, resident: rss / MIB };
}

// Loaded before a program (`--expose-gc --require`), it answers whoever started that program and keeps nothing alive.
if (process.send && globalThis.gc) {
  process.on('message', (message) => {
    if (message === WEIGH) void weigh().then((weight) => process.send!(weight));
  });
  process.channel?.unref();
}
