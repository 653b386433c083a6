import { hostname } from 'node:os';
import { pino } from 'pino';
import { readConfig } from '../../../libs/config';
import { loggable, openStore } from '../../../libs/store';
import { startWorker } from './start-worker';

/** Longest wait for the work under way; who is not done by then is taken up by another worker. */
const LONGEST_STOP_MS = 25_000;

async function main(): Promise<void> {
  const read = readConfig(process.env);
  if (!read.ok) return giveUp(read.problems.join('\n'));
  const { config } = read;
  if (config.databaseUrl === undefined || config.redisUrl === undefined)
    return giveUp('A worker of its own needs DATABASE_URL and REDIS_URL; without them `npm start` does its work too.');
  const log = pino({ level: config.logLevel });
  const store = openStore({
    url: config.databaseUrl,
    poolSize: config.workerConcurrency + 4,
    timeZone: config.timeZone,
    name: `worker ${hostname()}:${process.pid} x${config.workerConcurrency}`,
  });
  try {
    const worker = await startWorker({
      config,
      store,
      onError: (error) => log.warn({ error: loggable(error) }, 'worker'),
    });
    const stop = () => {
      setTimeout(() => process.exit(1), LONGEST_STOP_MS).unref();
      void worker
        .close()
        .then(() => store.close())
        .then(() => process.exit(0));
    };
    process.once('SIGTERM', stop);
    process.once('SIGINT', stop);
    log.info({ concurrency: config.workerConcurrency }, 'worker ready');
  } catch (error) {
    await store.close();
    giveUp((error as Error).message);
  }
}

function giveUp(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = 1;
}

void main();
