import { once } from 'node:events';
import { checkTimes, disturb, resumedAfter } from '../disturb';
import type { Fault } from '../fault';
import { checkStillAlive } from '../nothing-lost';

/** F1: the only worker process is killed, and another is started in its place. */
export const workerKilled: Fault = {
  id: 'F1',
  title: 'worker killed in mid-work',
  full: 200,
  short: 2,
  async run(plan, tally) {
    const { house } = plan;
    let child = await house.workerProcess();
    const times: number[] = [];
    await disturb(plan, tally, { units: 2_000, perScene: 10 }, async (recheckId) => {
      const at = Date.now();
      child.kill('SIGKILL');
      await once(child, 'exit');
      child = await house.workerProcess();
      times.push(await resumedAfter(plan, recheckId, at));
    });
    await checkStillAlive(plan, tally);
    checkTimes(plan, tally, 'resumed after', times, 20_000);
  },
};
