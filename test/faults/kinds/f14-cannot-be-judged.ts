import { once } from 'node:events';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import type { Fault, FaultPlan, Tally } from '../fault';
import { checkStillAlive, within } from '../nothing-lost';
import { expectedPicture, look, partsOf, pictureOf, publish, setScene, type Scene } from '../scene';
import { SCENE_SEED } from '../disturb';

/** Units of a scene that hold a part that will be outdated: only its grounds are held against those it had before. */
function outdatedUnits(seed: number, count: number): readonly number[] {
  const parts = partsOf(seed, count);
  const places = parts.length / count;
  return Array.from({ length: count }, (_, unit) => unit).filter((unit) =>
    parts.slice(unit * places, (unit + 1) * places).includes(1),
  );
}

/** F14: one unit among many cannot be judged. It is set aside with its reason after three tries; the rest go on. */
export const cannotBeJudged: Fault = {
  id: 'F14',
  title: 'one unit cannot be judged: it throws, or never ends',
  full: 10,
  short: 1,
  async run(plan, tally) {
    const spins = Math.ceil(plan.dose / 5);
    tally.whole = plan.dose + spins;
    for (let round = 0; round < plan.dose; round++) await oneThrows(plan, tally);
    for (let round = 0; round < spins; round++) await oneSpins(plan, tally);
    await plan.house.work('alone');
    await checkStillAlive(plan, tally);
  },
};

async function oneThrows(plan: FaultPlan, tally: Tally): Promise<void> {
  const { house, draw } = plan;
  const count = plan.timed ? 2_000 : 200;
  const worker = await house.work('alone');
  const scene = await setScene(house, count, SCENE_SEED);
  const bad = draw.oneOf(outdatedUnits(SCENE_SEED, count));
  await house.pool.query(`UPDATE install SET verdict = 'outdated', judgement = '"spoilt"' WHERE unit_id = $1`, [
    scene.units[bad],
  ]);
  const delay = monitorEventLoopDelay({ resolution: 10 });
  delay.enable();
  await checkSetAside(plan, tally, { scene, bad, why: '' });
  delay.disable();
  const p99 = delay.percentile(99) / 1e6;
  tally.say(`event loop delay p99 ${p99.toFixed(0)} ms where it throws`);
  if (plan.timed) tally.check(p99 < 200, `the event loop was held up for ${p99.toFixed(0)} ms (p99)`);
  await worker.close();
}

/**
 * No stored data is known that makes judging spin: rules are spans and lists, and nothing stored is run. So the spin is
 * brought in from outside, in worker processes that are held up for longer than the database lets a transaction be
 * silent; everybody who is not a worker goes on undisturbed.
 */
async function oneSpins(plan: FaultPlan, tally: Tally): Promise<void> {
  const { house, draw } = plan;
  const count = plan.timed ? 2_000 : 10;
  const scene = await setScene(house, count, SCENE_SEED);
  const bad = draw.oneOf(outdatedUnits(SCENE_SEED, count));
  const [spinMs, idleLimitMs] = plan.timed ? [60_000, 20_000] : [1_000, 400];
  const spinning = () => house.spinningWorker(scene.units[bad]!, spinMs, idleLimitMs);
  const workers = [await spinning(), await spinning()];
  const delay = monitorEventLoopDelay({ resolution: 10 });
  delay.enable();
  // Every split is tried three times, and each try lasts as long as the spin.
  await checkSetAside({ ...plan, patienceMs: 2 * plan.patienceMs + 15 * spinMs }, tally, {
    scene,
    bad,
    why: 'did not end in time',
  });
  delay.disable();
  tally.say(`event loop delay p99 ${(delay.percentile(99) / 1e6).toFixed(0)} ms beside workers that spin`);
  for (const worker of workers) {
    worker.kill('SIGKILL');
    await once(worker, 'exit');
  }
}

async function checkSetAside(
  { house, patienceMs }: FaultPlan,
  tally: Tally,
  { scene, bad, why }: { readonly scene: Scene; readonly bad: number; readonly why: string },
): Promise<void> {
  const count = scene.units.length;
  const recheckId = await publish(house, scene);
  const done = await within(patienceMs, async () => (await look(house, recheckId))?.state === 'done');
  const row = (await look(house, recheckId))!;
  tally.struck(row.setAside > 0);
  tally.check(
    done && row.setAside === 1 && row.judged === 2 * (count - 1),
    `${row.judged} judged, ${row.setAside} set aside`,
  );
  const told = row.setAsideWhy[0] ?? '';
  tally.check(told.includes(`Unit ${scene.units[bad]}: `) && told.includes(why), `the reason: ${told}`);
  const [is, wanted] = [await pictureOf(house, scene), expectedPicture(SCENE_SEED, count)];
  const unlike = is.filter((line, i) => i !== bad && line !== wanted[i]);
  tally.check(unlike.length === 0, `${unlike.length} other units differ: ${unlike[0]}`);
}
