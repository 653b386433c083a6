import { attemptCallback, settleCallback } from '../../../libs/usecases';
import { manager } from '../../recheck/small-shop';
import { value } from '../../recheck/wait';
import type { Fault, FaultPlan, Tally } from '../fault';
import { within } from '../nothing-lost';
import { look, publish, setScene } from '../scene';

/** F11: two to sixteen people settle one callback at the same moment; one does, the others are told how it stands. */
export const settledByMany: Fault = {
  id: 'F11',
  title: 'up to 16 settle one callback at once',
  full: 1_000,
  short: 12,
  async run(plan, tally) {
    const { house } = plan;
    await house.work('alone');
    const scene = await setScene(house, Math.ceil(plan.dose * 1.5) + 10, 3);
    const recheckId = await publish(house, scene);
    await within(plan.patienceMs, async () => (await look(house, recheckId))?.state === 'done');
    const { rows } = await house.pool.query<{ id: number; version: number }>(
      `SELECT id, version FROM callback WHERE unit_id = ANY($1) AND state = 'open' ORDER BY id LIMIT $2`,
      [scene.units, plan.dose],
    );
    tally.check(rows.length === plan.dose, `${rows.length} callbacks are open, ${plan.dose} were wanted`);
    for (const call of rows) await settleAtOnce(plan, tally, call);
  },
};

async function settleAtOnce(
  { house, draw }: FaultPlan,
  tally: Tally,
  call: { readonly id: number; readonly version: number },
): Promise<void> {
  const { ports } = house.shop;
  const tried = await value(
    attemptCallback(ports, manager, { ...call, how: 'phone', outcome: 'no-answer', note: '', nextOn: null }),
  );
  tally.check(tried.attempts.length === 1, `callback ${call.id} holds ${tried.attempts.length} tries`);
  const settle = { id: call.id, version: tried.version, outcome: 'part-sent' as const, reason: 'two pins by post' };
  const people = 2 + draw.below(15);
  const answers = await Promise.all(Array.from({ length: people }, () => settleCallback(ports, manager, settle)));
  const won = answers.filter((one) => one.ok).length;
  const told = answers.filter(
    (one) => !one.ok && one.refusal.code === 'stale' && (one.refusal.current as { state: string }).state === 'settled',
  ).length;
  tally.struck(told > 0);
  tally.check(
    won === 1 && told === people - 1,
    `callback ${call.id}: ${won} of ${people} settled it, ${told} were told`,
  );
  const { rows } = await house.pool.query<{ version: number }>('SELECT version FROM callback WHERE id = $1', [call.id]);
  tally.check(rows[0]!.version === tried.version + 1, `callback ${call.id} was written more than once`);
}
