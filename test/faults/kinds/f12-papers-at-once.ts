import { day, formatDay } from '../../../libs/day';
import { publishBulletin, saveBulletin, withdrawBulletin } from '../../../libs/usecases';
import { bulletin, manager, rule } from '../../recheck/small-shop';
import { value } from '../../recheck/wait';
import { SCENE_SEED } from '../disturb';
import { Draw } from '../draw';
import type { Fault, FaultPlan, Tally } from '../fault';
import { checkStillAlive, midWork, within } from '../nothing-lost';
import { look, partsOf, setScene, type Scene } from '../scene';

const UNITS = 120;

/**
 * F12, its papers: two bulletins about the same units are published at the same moment, and one of them is withdrawn while
 * its recheck runs. In the end every verdict is what the papers that are left say, and nobody is called twice.
 */
export const papersAtOnce: Fault = {
  id: 'F12B',
  title: 'two bulletins at once, one withdrawn in mid-work',
  full: 50,
  short: 2,
  async run(plan, tally) {
    await plan.house.work('alone');
    await plan.house.work('alone');
    for (let round = 0; round < plan.dose; round++) await publishBoth(plan, tally, { withdraws: round % 2 === 1 });
    await checkStillAlive(plan, tally);
  },
};

async function publishBoth(
  plan: FaultPlan,
  tally: Tally,
  { withdraws }: { readonly withdraws: boolean },
): Promise<void> {
  const { house } = plan;
  const { ports } = house.shop;
  const scene = await setScene(house, UNITS, SCENE_SEED);
  const blades = await fitBlades(plan, scene);
  const other = await saveOther(plan, scene);
  const [first, second] = await Promise.all(
    [scene.bulletinId, other].map((id) => value(publishBulletin(ports, manager, { id, version: 1 }))),
  );
  const rechecks = [first!.recheckId, second!.recheckId];
  if (withdraws) {
    tally.struck(await midWork(house, rechecks[0]!));
    const { rows } = await house.pool.query<{ version: number }>('SELECT version FROM source WHERE id = $1', [
      scene.bulletinId,
    ]);
    const withdrawal = { id: scene.bulletinId, version: rows[0]!.version, reason: 'The maker took it back' };
    rechecks.push((await value(withdrawBulletin(ports, manager, withdrawal))).recheckId);
  } else {
    const running = await Promise.all(rechecks.map(async (id) => (await look(house, id))?.state !== 'done'));
    tally.struck(running.every(Boolean));
  }
  const done = await within(plan.patienceMs, async () =>
    (await Promise.all(rechecks.map((id) => look(house, id)))).every((row) => row?.state === 'done'),
  );
  tally.check(done, `${scene.number}: not all of ${rechecks.length} rechecks ended`);
  const [is, wanted] = [await standing(plan, scene), expected(blades, withdraws)];
  const unlike = wanted.flatMap((line, i) => (line === is[i] ? [] : [`is ${is[i]}, must be ${line}`]));
  tally.check(unlike.length === 0, `${scene.number}: ${unlike.length} of ${UNITS} units differ: ${unlike[0]}`);
}

/** A bolt at the blade of every unit of the scene, besides its two pins; answers which part. */
async function fitBlades({ house }: FaultPlan, { units, seed }: Scene): Promise<readonly number[]> {
  const draw = new Draw(seed + 1);
  const parts = units.map(() => 1 + draw.below(3));
  await house.pool.query(
    `INSERT INTO install (unit_id, position_id, place, record_id, ticket_id, line_id, part_id, fitted_on, built_from, built_to)
     SELECT i.unit_id, 2, 1, 0, i.ticket_id, 1, p.part, $3, i.built_from, i.built_to
     FROM unnest($1::int[], $2::int[]) AS p(unit, part) JOIN install i ON i.unit_id = p.unit AND i.place = 1`,
    [units, parts, day('2016-05-01')],
  );
  return parts;
}

/** A bulletin that asks for HOLM/B at the blade of the same units. */
async function saveOther({ house }: FaultPlan, scene: Scene): Promise<number> {
  const { rows } = await house.pool.query<{ from: number; to: number }>(
    'SELECT built_from AS "from", built_to AS "to" FROM unit WHERE id = $1',
    [scene.units[0]],
  );
  const built = { from: formatDay(rows[0]!.from), to: formatDay(rows[0]!.to) };
  const blade = rule(`${scene.number}-blade`, { positions: ['blade'], built, required: 'HOLM/B', action: 'call-back' });
  return (await value(saveBulletin(house.shop.ports, manager, bulletin(`${scene.number}-blade`, [blade])))).id;
}

/** What the papers that are left say, worked out without the code under test. The parts list wants HOLM/A at the pin. */
function expected(blades: readonly number[], withdrawn: boolean): readonly string[] {
  const pins = partsOf(SCENE_SEED, UNITS);
  const pinWords = withdrawn ? ['right', 'wrong', 'wrong'] : ['outdated', 'right', 'wrong'];
  const bladeWords = ['wrong', 'right', 'outdated'];
  return blades.map((blade, unit) => {
    const pinVerdicts = [pins[2 * unit]!, pins[2 * unit + 1]!].map((part) => pinWords[part - 1]!);
    const bladeVerdict = bladeWords[blade - 1]!;
    const late = [...(withdrawn ? [] : pinVerdicts), bladeVerdict].filter((word) => word !== 'right').length;
    return `${[...pinVerdicts, bladeVerdict].join(', ')} | calls ${late > 0 ? 1 : 0} for ${late}, none twice`;
  });
}

/** The same as the database has it: open calls and the reasons that still hold, and whether any reason stands twice. */
async function standing({ house }: FaultPlan, { units }: Scene): Promise<readonly string[]> {
  const { rows } = await house.pool.query<{ text: string }>(
    `SELECT (SELECT string_agg(COALESCE(i.verdict, 'none'), ', ' ORDER BY i.position_id, i.place) FROM install i
             WHERE i.unit_id = u.id)
       || ' | calls ' || (SELECT count(*) FROM callback c WHERE c.unit_id = u.id AND c.state = 'open')
       || ' for ' || (SELECT count(*) FROM callback c JOIN callback_reason r ON r.callback_id = c.id
                      WHERE c.unit_id = u.id AND c.state = 'open' AND r.withdrawn_at IS NULL)
       || CASE WHEN EXISTS (
            SELECT 1 FROM callback c JOIN callback_reason r ON r.callback_id = c.id
            WHERE c.unit_id = u.id AND r.withdrawn_at IS NULL
            GROUP BY r.source_id, r.position_id, r.place HAVING count(*) > 1) THEN ', some twice' ELSE ', none twice' END
       AS text
     FROM unnest($1::int[]) WITH ORDINALITY AS u(id, n) ORDER BY u.n`,
    [units],
  );
  return rows.map(({ text }) => text);
}
