import { judgeChunk, planChunks } from '../../../libs/usecases';
import { SCENE_SEED } from '../disturb';
import type { Fault } from '../fault';
import { checkNothingLost, checkStillAlive } from '../nothing-lost';
import { CHUNK_UNITS } from '../house';
import { publish, setScene } from '../scene';

const CHUNKS = 6;

/** F13: every job comes twice at the same moment, and once more when everything is long done. */
export const deliveredTwice: Fault = {
  id: 'F13',
  title: 'every job delivered three times',
  full: 50,
  short: 2,
  async run(plan, tally) {
    const { house } = plan;
    const { ports } = house.shop;
    for (let round = 0; round < plan.dose; round++) {
      const scene = await setScene(house, CHUNKS * CHUNK_UNITS, SCENE_SEED);
      const recheckId = await publish(house, scene);
      const planOnce = () => planChunks(ports, { recheckId }, { unitsAChunk: CHUNK_UNITS });
      await Promise.all([planOnce(), planOnce()]);
      const jobs = Array.from({ length: CHUNKS }, (_, n) => ({ recheckId, n }));
      await Promise.all(jobs.flatMap((job) => [judgeChunk(ports, job), judgeChunk(ports, job)]));
      tally.struck((await ports.store.rechecks.find(recheckId))!.judged === 2 * scene.units.length);
      for (const job of jobs) await judgeChunk(ports, job);
      await planOnce();
      await house.pool.query(
        `UPDATE outbox SET dispatched_at = now() WHERE dispatched_at IS NULL AND (payload->>'recheckId')::int = $1`,
        [recheckId],
      );
      await checkNothingLost(plan, tally, scene, recheckId);
    }
    await house.work('alone');
    await checkStillAlive(plan, tally);
  },
};
