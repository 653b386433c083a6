import { publishBulletin } from '../../../libs/usecases';
import { manager } from '../../recheck/small-shop';
import { SCENE_SEED } from '../disturb';
import { Tally, type Fault } from '../fault';
import { checkNothingLost } from '../nothing-lost';
import { setScene } from '../scene';

const AT_ONCE = 50;

/** F10: one bulletin is published by fifty at the same moment; one does it, the others are told that it is done. */
export const publishedByMany: Fault = {
  id: 'F10',
  title: `${AT_ONCE} publish one bulletin at once`,
  full: 20,
  short: 1,
  async run(plan) {
    const tally = new Tally();
    const { house } = plan;
    const { ports } = house.shop;
    await house.work('alone');
    for (let round = 0; round < plan.dose; round++) {
      const scene = await setScene(house, 10, SCENE_SEED);
      const input = { id: scene.bulletinId, version: 1 };
      const answers = await Promise.all(Array.from({ length: AT_ONCE }, () => publishBulletin(ports, manager, input)));
      const taken = answers.flatMap((one) => (one.ok ? [one.value.recheckId] : []));
      tally.struck(answers.length - taken.length === AT_ONCE - 1);
      const others = answers.filter(
        (one) =>
          !one.ok &&
          one.refusal.code === 'already-done' &&
          (one.refusal.current as { id: number }).id === scene.bulletinId,
      );
      tally.check(taken.length === 1, `${taken.length} of ${AT_ONCE} published ${scene.number}`);
      tally.check(others.length === AT_ONCE - 1, `${others.length} were told that ${scene.number} is done`);
      const { rows } = await house.pool.query('SELECT 1 FROM recheck WHERE source_id = $1', [scene.bulletinId]);
      tally.check(rows.length === 1, `${scene.number} has ${rows.length} rechecks`);
      await checkNothingLost(plan, tally, scene, taken[0]!);
    }
    return tally.report();
  },
};
