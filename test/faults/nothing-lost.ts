import type { House } from './house';
import type { FaultPlan, Tally } from './fault';
import { expectedPicture, look, pictureOf, publish, setScene, type Scene } from './scene';

/** Asks until the answer is yes or the time is over. */
export async function within(ms: number, asked: () => Promise<boolean>): Promise<boolean> {
  for (const end = Date.now() + ms; Date.now() < end;) {
    if (await asked().catch(() => false)) return true;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  return false;
}

/** Waits until some of the recheck is done and some is not; false when it ended or never began. */
export async function midWork(house: House, recheckId: number, since = 0): Promise<boolean> {
  let row = await look(house, recheckId);
  await within(30_000, async () => {
    row = await look(house, recheckId);
    return row !== null && (row.judged > since || row.state === 'done');
  });
  return row?.state === 'running' && row.judged < row.planned;
}

/** It is what the others are held against, so it may take its time. */
const UNDISTURBED_MS = 300_000;
const undisturbed = new Map<string, readonly string[]>();

/** What came of the same scene when nothing disturbed it; run once for each seed and size. */
async function undisturbedPicture(house: House, seed: number, count: number): Promise<readonly string[]> {
  const name = `${seed} ${count}`;
  const found = undisturbed.get(name);
  if (found) return found;
  const scene = await setScene(house, count, seed);
  const worker = await house.work('alone');
  const recheckId = await publish(house, scene);
  const done = await within(UNDISTURBED_MS, async () => (await look(house, recheckId))?.state === 'done');
  await worker.close();
  if (!done) throw new Error(`the recheck that nothing disturbed did not end within ${UNDISTURBED_MS} ms`);
  const picture = await pictureOf(house, scene);
  undisturbed.set(name, picture);
  return picture;
}

/** How a disturbed scene ended, against the six conditions of "nothing lost". */
export async function checkNothingLost(
  { house, patienceMs }: FaultPlan,
  tally: Tally,
  scene: Scene,
  recheckId: number,
): Promise<void> {
  const { seed, units, number } = scene;
  const say = (sentence: string) => tally.problems.push(`${number}: ${sentence}`);
  const done = await within(patienceMs, async () => (await look(house, recheckId))?.state === 'done');
  const row = await look(house, recheckId);
  // (iv) the run is done, every item judged, no bell left, nothing set aside.
  if (!done) say(`the recheck stands at ${row?.judged} of ${row?.planned} after ${patienceMs} ms`);
  else if (row!.judged !== row!.planned || row!.setAside > 0)
    say(`${row!.judged} of ${row!.planned} judged, ${row!.setAside} set aside: ${row!.setAsideWhy.join(' ')}`);
  if (done && !(await within(patienceMs, () => noBellLeft(house, recheckId)))) say('a bell was never rung');
  // (i), (ii), (v): verdicts, one history row a change, one call and one reason, as the oracle and as undisturbed.
  const picture = await pictureOf(house, scene);
  compare(picture, expectedPicture(seed, units.length), 'must be', say);
  compare(picture, await undisturbedPicture(house, seed, units.length), 'undisturbed is', say);
}

/** (vi) A new bulletin is done within thirty seconds by whoever works now. */
export async function checkStillAlive(plan: FaultPlan, tally: Tally): Promise<void> {
  const scene = await setScene(plan.house, 5, 1);
  const recheckId = await publish(plan.house, scene);
  await checkNothingLost({ ...plan, patienceMs: 30_000 }, tally, scene, recheckId);
}

async function noBellLeft(house: House, recheckId: number): Promise<boolean> {
  const { rows } = await house.pool.query<{ n: number }>(
    `SELECT count(*)::int AS n FROM outbox WHERE dispatched_at IS NULL AND (payload->>'recheckId')::int = $1`,
    [recheckId],
  );
  return rows[0]!.n === 0;
}

function compare(is: readonly string[], wanted: readonly string[], word: string, say: (text: string) => void): void {
  const unlike = is.flatMap((line, i) => (line === wanted[i] ? [] : [`is ${line}, ${word} ${wanted[i]}`]));
  if (unlike.length > 0) say(`${unlike.length} of ${is.length} units differ: unit ${unlike[0]}`);
}
