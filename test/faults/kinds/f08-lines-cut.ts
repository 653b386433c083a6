import { checkTimes, disturb, pause, resumedAfter } from '../disturb';
import type { Fault } from '../fault';
import { checkStillAlive, within } from '../nothing-lost';
import type { House } from '../house';

/**
 * F8: sessions are ended by the server, every line is cut, nothing passes for a while, and another takes all
 * connections of the pool. Afterwards there are no more connections than before.
 */
export const linesCut: Fault = {
  id: 'F8',
  title: 'database lines cut, swallowed, used up',
  full: 520,
  short: 8,
  async run(plan, tally) {
    const { house } = plan;
    await house.work('queue');
    await checkStillAlive(plan, tally);
    const before = await connections(house);
    const swallowed: number[] = [];
    let turn = 0;
    await disturb(plan, tally, { units: 800, perScene: 4 }, async (recheckId) => {
      const kind = turn++ % 4;
      if (kind === 0) await house.cutSessions();
      else if (kind === 1) house.door.cut();
      else if (kind === 2) await useUp(house);
      else {
        house.door.swallow();
        await pause(plan.awayMs);
        house.door.speak();
        swallowed.push(await resumedAfter(plan, recheckId));
      }
    });
    await checkStillAlive(plan, tally);
    const back = await within(15_000, async () => (await connections(house)) <= before + 1);
    tally.check(back, `${await connections(house)} connections are open, ${before} were before`);
    checkTimes(plan, tally, 'resumed after silence in', swallowed, 20_000);
  },
};

/** Takes every connection of the store's pool for a moment. */
async function useUp({ shop: { store } }: House): Promise<void> {
  const held = await Promise.all(Array.from({ length: store.pool.options.max }, () => store.pool.connect()));
  await pause(300);
  held.forEach((client) => client.release());
}

async function connections({ pool }: House): Promise<number> {
  const { rows } = await pool.query<{ n: number }>(
    `SELECT count(*)::int AS n FROM pg_stat_activity WHERE application_name LIKE 'revright%'`,
  );
  return rows[0]!.n;
}
