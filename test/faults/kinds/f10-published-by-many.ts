import { isDeepStrictEqual } from 'node:util';
import { publishBulletin, StoreOutage } from '../../../libs/usecases';
import { manager } from '../../recheck/small-shop';
import { openApi, signIn } from '../at-the-counter';
import { pause, SCENE_SEED } from '../disturb';
import type { Fault, FaultPlan, Tally } from '../fault';
import { checkNothingLost } from '../nothing-lost';
import { setScene, type Scene } from '../scene';

const AT_ONCE = 50;

/** F10: one bulletin is published by fifty at the same moment; one does it, the others are told that it is done. */
export const publishedByMany: Fault = {
  id: 'F10',
  title: `${AT_ONCE} publish one bulletin at once`,
  full: 20,
  short: 1,
  async run(plan, tally) {
    const { house } = plan;
    const { ports } = house.shop;
    // Once below HTTP and twice over it.
    tally.whole = 3 * plan.dose;
    await house.work('alone');
    for (let round = 0; round < plan.dose; round++) {
      const scene = await setScene(house, 10, SCENE_SEED);
      const input = { id: scene.bulletinId, version: 1 };
      const answers = await Promise.all(
        Array.from({ length: AT_ONCE }, () => untilTold(() => publishBulletin(ports, manager, input))),
      );
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
    await overHttp(plan, tally);
  },
};

/** On a machine with much else to do a turn may not come in time; whoever hears that asks again, as a client does. */
async function untilTold<T>(ask: () => Promise<T>): Promise<T> {
  for (;;) {
    try {
      return await ask();
    } catch (error) {
      if (!(error instanceof StoreOutage)) throw error;
      await pause(100);
    }
  }
}

interface Answer {
  readonly status: number;
  readonly body: Readonly<Record<string, unknown>>;
}

/** The same over HTTP: under one key all hear the same, under keys of their own or none one does it and the others are told. */
async function overHttp(plan: FaultPlan, tally: Tally): Promise<void> {
  const { house } = plan;
  const api = await openApi(house);
  try {
    const cookie = await signIn(house, api.url);
    const ask: Ask = async ({ bulletinId }, key, body) => {
      const keyed: Record<string, string> = key === null ? {} : { 'idempotency-key': key };
      const answer = await fetch(`${api.url}/api/bulletins/${bulletinId}/publish`, {
        method: 'POST',
        headers: { cookie, 'content-type': 'application/json', 'if-match': '"1"', ...keyed },
        body: JSON.stringify(body),
      });
      if (answer.status === 503) throw new StoreOutage(await answer.text());
      return { status: answer.status, body: (await answer.json()) as Answer['body'] };
    };
    for (let round = 0; round < plan.dose; round++) {
      await underOneKey(plan, tally, ask);
      await withoutKey(plan, tally, ask);
    }
  } finally {
    await api.close();
  }
}

type Ask = (scene: Scene, key: string | null, body: object) => Promise<Answer>;

/** What a person was shown before publishing. */
const shown = async ({ house }: FaultPlan) => ({ whatIfRevision: (await house.shop.store.rulebook.latest()).revision });

async function underOneKey(plan: FaultPlan, tally: Tally, ask: Ask): Promise<void> {
  const scene = await setScene(plan.house, 10, SCENE_SEED);
  const key = `publish-${scene.number}`;
  const body = await shown(plan);
  // Who comes while the first is worked on is told so, and asks again with the same key.
  const untilAnswered = async (): Promise<{ last: Answer; waited: boolean }> => {
    let waited = false;
    for (;;) {
      const last = await untilTold(() => ask(scene, key, body));
      if (last.status !== 409 || !String(last.body['type']).endsWith('still-running')) return { last, waited };
      waited = true;
      await pause(20);
    }
  };
  const heard = await Promise.all(Array.from({ length: AT_ONCE }, untilAnswered));
  tally.struck(heard.some(({ waited }) => waited));
  // Alike as JSON: a kept answer may come with its fields in another order.
  const [first] = heard;
  const unlike = heard.filter(({ last }) => !isDeepStrictEqual(last, first!.last));
  tally.check(
    first!.last.status === 200 && unlike.length === 0,
    `under one key ${JSON.stringify(first!.last)} was heard, and ${unlike.length} times something else: ${JSON.stringify(unlike[0]?.last)}`,
  );
  const other = await ask(scene, key, { whatIfRevision: 999_999 });
  tally.check(other.status === 422, `another body under the same key was answered with ${other.status}`);
  await checkOnce(plan, tally, scene);
}

async function withoutKey(plan: FaultPlan, tally: Tally, ask: Ask): Promise<void> {
  const scene = await setScene(plan.house, 10, SCENE_SEED);
  const body = await shown(plan);
  const heard = await Promise.all(Array.from({ length: AT_ONCE }, () => untilTold(() => ask(scene, null, body))));
  const told = heard.filter(({ status }) => status === 409).length;
  tally.struck(told > 0);
  const done = heard.filter(({ status }) => status === 200).length;
  tally.check(done === 1 && told === AT_ONCE - 1, `without a key ${done} published and ${told} were told`);
  await checkOnce(plan, tally, scene);
}

async function checkOnce(plan: FaultPlan, tally: Tally, scene: Scene): Promise<void> {
  const { rows } = await plan.house.pool.query<{ id: number }>('SELECT id FROM recheck WHERE source_id = $1', [
    scene.bulletinId,
  ]);
  tally.check(rows.length === 1, `${scene.number} has ${rows.length} rechecks`);
  if (rows[0]) await checkNothingLost(plan, tally, scene, rows[0].id);
}
