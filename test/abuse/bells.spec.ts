import { Queue } from 'bullmq';
import { handlersOn } from '../../apps/worker/src/handlers';
import { formatDay } from '../../libs/day';
import { handlersByJob, JOB_SETTINGS, PREFIX, QUEUE, startQueueWorker } from '../../libs/queue';
import { withDatabase, withRedis } from '../../libs/testing';
import { judgeChunk, planChunks, publishBulletin, saveBulletin } from '../../libs/usecases';
import { bulletin, manager, rule, SmallShop, TODAY } from '../recheck/small-shop';
import { until, value } from '../recheck/wait';
import { sums } from './sums';

const db = withDatabase();
const redis = withRedis();
let shop: SmallShop;

beforeAll(async () => {
  shop = await SmallShop.open(db.url, db.pool);
  db.beforeClose(() => shop.store.close());
}, 300_000);

/** Closed again, whatever became of the test. */
const open: { close(): Promise<void> }[] = [];
afterEach(() => Promise.all(open.splice(0).map((one) => one.close())));

/** A recheck that has judged a unit and is done. */
async function done(): Promise<number> {
  await shop.unit([[1, 1, 1]], { handedOver: formatDay(TODAY - 100) });
  const opens = [rule('FR-2', { required: 'HOLM/B', action: 'call-back', replaces: ['FR-PIN'] })];
  const { id } = await value(saveBulletin(shop.ports, manager, bulletin('SB-1', opens)));
  const { recheckId } = await value(publishBulletin(shop.ports, manager, { id, version: 1 }));
  await planChunks(shop.ports, { recheckId });
  await judgeChunk(shop.ports, { recheckId, n: 0 });
  expect(await shop.store.rechecks.find(recheckId)).toMatchObject({ state: 'done', callbacksOpened: 1 });
  return recheckId;
}

describe('45: a bell that somebody forged in the queue', () => {
  it('does nothing: one that names no work is refused at once, one that names none there is finds nothing to do', async () => {
    const recheckId = await done();
    const [far, half] = [2_000_000_000, { recheckId }];
    const forged: readonly (readonly [string, object, 'failed' | 'completed'])[] = [
      ['polish', {}, 'failed'],
      ['judge-chunk', half, 'failed'],
      ['judge-chunk', { ...half, n: 0, ticketId: 1, verdict: 'right' }, 'failed'],
      ['judge-chunk', { recheckId: `${recheckId}; DROP TABLE ticket`, n: 0 }, 'failed'],
      ['plan-chunks', { recheckId: -1 }, 'failed'],
      ['judge-chunk', { ...half, n: 0 }, 'completed'],
      ['judge-chunk', { ...half, n: 77 }, 'completed'],
      ['judge-chunk', { recheckId: far, n: 0 }, 'completed'],
      ['plan-chunks', half, 'completed'],
      ['plan-chunks', { recheckId: far }, 'completed'],
    ];
    const before = await sums(db.pool);
    const queue = new Queue(QUEUE, { connection: { url: redis.url }, prefix: PREFIX });
    open.push(queue);
    const handlers = handlersByJob(handlersOn(shop.ports));
    open.push(startQueueWorker(redis.url, handlers, { concurrency: 4, onError: () => undefined }));
    const jobs = await Promise.all(forged.map(([name, data]) => queue.add(name, data, JOB_SETTINGS)));
    const states = () => Promise.all(jobs.map((job) => job.getState()));
    await until(async () => (await states()).every((state) => state === 'failed' || state === 'completed'));
    expect(await states()).toEqual(forged.map(([, , state]) => state));
    // No refused one was tried again.
    expect((await queue.getFailed()).map(({ attemptsMade }) => attemptsMade)).toEqual([1, 1, 1, 1, 1]);
    expect(await sums(db.pool)).toEqual(before);
  }, 60_000);
});
