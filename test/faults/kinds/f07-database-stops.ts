import { openApi } from '../at-the-counter';
import { checkTimes, disturb, pause } from '../disturb';
import type { Fault } from '../fault';
import { checkStillAlive, within } from '../nothing-lost';

/** F7: PostgreSQL stops at once and recovers from its log; the API says 503 and when to ask again, never 500. */
export const databaseStops: Fault = {
  id: 'F7',
  title: 'PostgreSQL stopped at once',
  full: 20,
  short: 1,
  async run(plan, tally) {
    const { house } = plan;
    const api = await openApi(house);
    const [answered, healthy]: [number[], number[]] = [[], []];
    try {
      await house.work('queue');
      await disturb(plan, tally, { units: 800, perScene: 2 }, async () => {
        await house.breakDatabase();
        const at = Date.now();
        const answer = await fetch(`${api.url}/api/health`);
        answered.push(Date.now() - at);
        const says = `${answer.status} ${answer.headers.get('retry-after') === null ? 'without' : 'with'} Retry-After`;
        tally.check(says === '503 with Retry-After', `the API said ${says} while the database was away`);
        await pause(plan.awayMs);
        await house.returnDatabase();
        const back = Date.now();
        const fine = await within(plan.patienceMs, async () => (await fetch(`${api.url}/api/health`)).status === 200);
        tally.check(fine, 'the API did not become healthy again');
        healthy.push(Date.now() - back);
      });
      await checkStillAlive(plan, tally);
    } finally {
      await api.close();
    }
    checkTimes(plan, tally, 'said 503 within', answered, 3_000);
    checkTimes(plan, tally, 'healthy after', healthy, 15_000);
  },
};
