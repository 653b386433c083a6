import { hostname } from 'node:os';
import { pino } from 'pino';
import { dayOfInstant } from '../../../libs/day';
import { makeDemoShop } from '../../../libs/demo';
import { addDemoPhotos } from '../../../libs/pictures';
import { RedisRefused } from '../../../libs/queue';
import { asProgram, loggable, openStore, seedIfEmpty } from '../../../libs/store';
import { startApi } from '../../api/src/start-api';
import { StartRefused } from '../../api/src/start-refused';
import { startWorker } from '../../worker/src/start-worker';
import { type RunningConfig, type Say, type SoloParts } from './run-solo';

/** The demo shop is the same at every first start, but for the day it stands at. */
const DEMO_SEED = 1;

/** The API and the worker on one store. */
export function shopParts(config: RunningConfig, say: Say): SoloParts {
  const log = pino({ level: config.logLevel }, pino.destination(2));
  const store = openStore({
    url: config.databaseUrl,
    poolSize: config.workerConcurrency + 10,
    timeZone: config.timeZone,
    name: `worker ${hostname()}:${process.pid} x${config.workerConcurrency}`,
  });
  const makeShop = () => {
    say('Filling the empty database with the demo shop; this takes a moment.');
    return makeDemoShop(DEMO_SEED, dayOfInstant(new Date(), config.timeZone));
  };
  return {
    // A whole shop is loaded by the owner of the tables, in whose name nothing else is done here.
    seedIfEmpty: async () => {
      const owner = openStore({ url: config.migrationDatabaseUrl ?? config.databaseUrl, poolSize: 2 });
      const seeded = await seedIfEmpty(owner, makeShop).finally(() => owner.close());
      const clock = { now: () => Date.now(), today: () => dayOfInstant(new Date(), config.timeZone) };
      if (seeded) await asProgram(() => addDemoPhotos({ store, clock }));
    },
    startWorker: () =>
      startWorker({ config, store, onError: (error) => log.warn({ error: loggable(error) }, 'worker') }),
    startApi: async () => {
      const api = await startApi({ config, store });
      for (const notice of api.notices) say(notice);
      return api;
    },
    refusalOf: (error) => (error instanceof RedisRefused || error instanceof StartRefused ? error.message : undefined),
    close: () => store.close(),
  };
}
