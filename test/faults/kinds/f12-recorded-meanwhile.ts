import { judgeUnit } from '../../../libs/usecases';
import { manager } from '../../recheck/small-shop';
import { pause } from '../disturb';
import type { Fault, FaultPlan, Tally } from '../fault';
import { within } from '../nothing-lost';
import { look, publish, setScene, type Scene } from '../scene';

const NOTHING_ELSE = {
  partText: null,
  pack: null,
  marks: null,
  candidates: [],
  told: null,
  condition: null,
  leftOutWhy: null,
};
const PIN = { positionId: 1, place: 1, side: 'found' as const, partId: 1, fittedOn: '2016-05-01', ...NOTHING_ELSE };
const AT_ONCE = 6;

/** F12: parts are recorded at the bench while the bulletin that judges them otherwise is published. */
export const recordedMeanwhile: Fault = {
  id: 'F12',
  title: 'parts recorded while a bulletin is published',
  full: 50,
  short: 1,
  async run(plan, tally) {
    await plan.house.work('alone');
    let recorded = 0;
    for (let round = 0; round < plan.dose; round++) {
      const scene = await setScene(plan.house, plan.timed ? 500 : 60, 5);
      recorded += scene.units.length;
      await recordAndPublish(plan, tally, scene);
    }
    tally.say(`${recorded} parts recorded`);
  },
};

async function recordAndPublish(plan: FaultPlan, tally: Tally, scene: Scene): Promise<void> {
  const { house, draw } = plan;
  const { units } = scene;
  const ticketOf = await openTickets(plan, units);
  let [begun, overlapping, published] = [0, 0, false];
  const record = (unitId: number) =>
    house.shop.store.transaction(async (tx) => {
      const before = !published;
      begun++;
      await tx.tickets.putRecords(ticketOf.get(unitId)!, unitId, [PIN], manager.id);
      await tx.units.refreshInstalls(unitId);
      await judgeUnit(tx, house.shop.clock, unitId);
      await pause(10 + draw.below(60));
      if (before && published) overlapping++;
    });
  const bench = (async () => {
    for (let i = 0; i < units.length; i += AT_ONCE) await Promise.all(units.slice(i, i + AT_ONCE).map(record));
  })();
  await within(plan.patienceMs, () => Promise.resolve(begun > 0));
  const asked = publish(house, scene);
  published = true;
  const recheckId = await asked;
  await bench;
  await within(plan.patienceMs, async () => (await look(house, recheckId))?.state === 'done');
  tally.struck(overlapping > 0);
  // What came in late is judged again by the sweeper at the latest.
  let text = '';
  const good = await within(plan.patienceMs, async () => (text = await standing(plan, units)) === 'outdated open');
  tally.check(good, `${scene.number}: recorded parts stand as ${text}, but must all be outdated with an open flag`);
}

async function openTickets({ house }: FaultPlan, units: readonly number[]): Promise<ReadonlyMap<number, number>> {
  await house.pool.query('DELETE FROM install WHERE unit_id = ANY($1)', [units]);
  const { rows } = await house.pool.query<{ id: number; unit: number }>(
    `UPDATE ticket SET closed_at = NULL, handed_over = FALSE WHERE unit_id = ANY($1) RETURNING id, unit_id AS unit`,
    [units],
  );
  return new Map(rows.map(({ id, unit }) => [unit, id]));
}

async function standing({ house }: FaultPlan, units: readonly number[]): Promise<string> {
  const { rows } = await house.pool.query<{ text: string }>(
    `SELECT string_agg(DISTINCT COALESCE(i.verdict, 'none') || ' ' || COALESCE(f.state, 'unflagged'), ', ') AS text
     FROM install i LEFT JOIN flag f ON f.unit_id = i.unit_id AND f.position_id = i.position_id AND f.place = i.place
     WHERE i.unit_id = ANY($1)`,
    [units],
  );
  return rows[0]!.text;
}
