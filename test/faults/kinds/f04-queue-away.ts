import { checkTimes, disturb, pause, resumedAfter, SCENE_SEED } from '../disturb';
import type { Fault, FaultPlan, Tally } from '../fault';
import { checkNothingLost, checkStillAlive } from '../nothing-lost';
import { publish, setScene } from '../scene';

/** F4: Redis stops and comes back: while nothing is to do, in mid-work, and while a bulletin is published. */
export const queueAway: Fault = {
  id: 'F4',
  title: 'Redis away',
  full: 20,
  short: 2,
  async run(plan, tally) {
    const { house, awayMs } = plan;
    await house.work('queue');
    const resumed: number[] = [];
    await disturb(
      { ...plan, dose: Math.ceil(plan.dose / 2) },
      tally,
      { units: 800, perScene: 2 },
      async (recheckId) => {
        await house.stopRedis();
        await pause(awayMs);
        await house.returnRedis();
        resumed.push(await resumedAfter(plan, recheckId));
      },
    );
    const published: number[] = [];
    for (let i = 0; i < Math.floor(plan.dose / 2); i++) published.push(await publishWithout(plan, tally));
    await checkStillAlive(plan, tally);
    checkTimes(plan, tally, 'resumed after its return', resumed, 20_000);
    checkTimes(plan, tally, 'published without it in', published, 1_000);
  },
};

async function publishWithout(plan: FaultPlan, tally: Tally): Promise<number> {
  const { house, awayMs } = plan;
  const scene = await setScene(house, 50, SCENE_SEED);
  await house.stopRedis();
  const at = Date.now();
  const recheckId = await publish(house, scene);
  const took = Date.now() - at;
  await pause(awayMs);
  const before = await house.shop.store.rechecks.find(recheckId);
  tally.struck(before!.judged < 100);
  await house.returnRedis();
  await checkNothingLost(plan, tally, scene, recheckId);
  return took;
}
