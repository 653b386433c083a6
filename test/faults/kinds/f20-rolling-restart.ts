import { once } from 'node:events';
import { checkTimes, disturb } from '../disturb';
import { Tally, type Fault } from '../fault';
import { checkStillAlive } from '../nothing-lost';

/** F20: workers are asked to end, one after the other, while another takes over; each finishes what it has begun. */
export const rollingRestart: Fault = {
  id: 'F20',
  title: 'workers restarted one by one',
  full: 50,
  short: 2,
  async run(plan) {
    const tally = new Tally();
    const { house } = plan;
    const children = [await house.workerProcess(), await house.workerProcess()];
    const times: number[] = [];
    await disturb(plan, tally, { units: 800, perScene: 4 }, async () => {
      const child = children.shift()!;
      const at = Date.now();
      child.kill('SIGTERM');
      const [code] = (await once(child, 'exit')) as [number | null];
      times.push(Date.now() - at);
      tally.check(code === 0, `a worker that was asked to end ended with ${code}`);
      children.push(await house.workerProcess());
    });
    await checkStillAlive(plan, tally);
    checkTimes(plan, tally, 'ended within', times, 25_000);
    return tally.report();
  },
};
