import { monitorEventLoopDelay } from 'node:perf_hooks';
import { Tally, type Fault } from '../fault';
import { checkStillAlive, within } from '../nothing-lost';
import { expectedPicture, look, partsOf, pictureOf, publish, setScene } from '../scene';
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
  title: 'one unit cannot be judged',
  full: 10,
  short: 1,
  async run(plan) {
    const tally = new Tally();
    const { house, draw } = plan;
    await house.work('alone');
    const count = plan.timed ? 2_000 : 200;
    const delay = monitorEventLoopDelay({ resolution: 10 });
    delay.enable();
    for (let round = 0; round < plan.dose; round++) {
      const scene = await setScene(house, count, SCENE_SEED);
      const bad = draw.oneOf(outdatedUnits(SCENE_SEED, count));
      await house.pool.query(`UPDATE install SET verdict = 'outdated', judgement = '"spoilt"' WHERE unit_id = $1`, [
        scene.units[bad],
      ]);
      const recheckId = await publish(house, scene);
      const done = await within(plan.patienceMs, async () => (await look(house, recheckId))?.state === 'done');
      const row = (await look(house, recheckId))!;
      tally.struck(row.setAside > 0);
      tally.check(
        done && row.setAside === 1 && row.judged === 2 * (count - 1),
        `${row.judged} judged, ${row.setAside} set aside`,
      );
      tally.check(
        row.setAsideWhy[0]?.includes(`Unit ${scene.units[bad]}`) === true,
        `the reason: ${row.setAsideWhy[0]}`,
      );
      const [is, wanted] = [await pictureOf(house, scene), expectedPicture(SCENE_SEED, count)];
      const unlike = is.filter((line, i) => i !== bad && line !== wanted[i]);
      tally.check(unlike.length === 0, `${unlike.length} other units differ: ${unlike[0]}`);
    }
    delay.disable();
    const p99 = delay.percentile(99) / 1e6;
    tally.say(`event loop delay p99 ${p99.toFixed(0)} ms`);
    if (plan.timed) tally.check(p99 < 200, `the event loop was held up for ${p99.toFixed(0)} ms (p99)`);
    await checkStillAlive(plan, tally);
    return tally.report();
  },
};
