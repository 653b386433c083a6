import type { FaultPlan, Tally } from './fault';
import { checkNothingLost, midWork, within } from './nothing-lost';
import { look, publish, setScene } from './scene';

export const SCENE_SEED = 7;
/** Enough chunks to be struck between the first and the last. */
const SHORT_UNITS = 400;

/**
 * Publishes scene after scene and strikes each several times while it is worked on, until the dose is spent; each scene
 * is then looked at for anything lost.
 */
export async function disturb(
  plan: FaultPlan,
  tally: Tally,
  { units, perScene }: { readonly units: number; readonly perScene: number },
  strike: (recheckId: number) => Promise<void>,
): Promise<void> {
  const { house, draw } = plan;
  for (let left = plan.dose; left > 0;) {
    const scene = await setScene(house, plan.timed ? units : Math.min(units, SHORT_UNITS), SCENE_SEED);
    const recheckId = await publish(house, scene);
    let judged = 0;
    for (let i = 0; i < perScene && left > 0; i++, left--) {
      const inMidWork = await midWork(house, recheckId, judged);
      if (!inMidWork && i > 0) break;
      judged = (await look(house, recheckId))?.judged ?? judged;
      await new Promise((resolve) => setTimeout(resolve, draw.below(40)));
      await strike(recheckId);
      tally.struck(inMidWork);
    }
    await checkNothingLost(plan, tally, scene, recheckId);
  }
}

/** Milliseconds until the recheck goes on from where it stood, or is done. */
export async function resumedAfter(plan: FaultPlan, recheckId: number, since = Date.now()): Promise<number> {
  const at = (await look(plan.house, recheckId))?.judged ?? 0;
  await within(plan.patienceMs, async () => {
    const row = await look(plan.house, recheckId);
    return row !== null && (row.judged > at || row.state === 'done');
  });
  return Date.now() - since;
}

/** The longest of some times, held to a figure where times count. */
export function checkTimes(
  plan: FaultPlan,
  tally: Tally,
  what: string,
  times: readonly number[],
  mostMs: number,
): void {
  const longest = Math.max(0, ...times);
  tally.say(`${what} ${(longest / 1_000).toFixed(1)} s at most`);
  if (plan.timed) tally.check(longest <= mostMs, `${what} took ${longest} ms, but must not take more than ${mostMs}`);
}

export const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
