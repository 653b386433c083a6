import { disturb } from '../disturb';
import type { Fault } from '../fault';
import { checkStillAlive } from '../nothing-lost';

/** F5: Redis loses everything it holds while a recheck runs. */
export const queueForgets: Fault = {
  id: 'F5',
  title: 'Redis forgets everything',
  full: 40,
  short: 2,
  async run(plan, tally) {
    await plan.house.work('queue');
    await disturb(plan, tally, { units: 800, perScene: 2 }, () => plan.house.flushRedis());
    await checkStillAlive(plan, tally);
  },
};
