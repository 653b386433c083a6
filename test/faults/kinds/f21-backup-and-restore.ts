import { join } from 'node:path';
import { Pool } from 'pg';
import { makeBackup, openStore, restoreBackup, verifyTrail, withDatabaseName } from '../../../libs/store';
import { folderInRun } from '../../../libs/testing';
import { SCENE_SEED } from '../disturb';
import { Tally, type Fault, type FaultPlan } from '../fault';
import { checkNothingLost, midWork, within } from '../nothing-lost';
import { expectedPicture, pictureOf, publish, setScene, type Scene } from '../scene';

/** F21: a backup is taken in mid-work, and put into an empty database with an empty Redis; both shops then end their work. */
export const backupAndRestore: Fault = {
  id: 'F21',
  title: 'backed up in mid-work, and put back',
  full: 10,
  short: 1,
  async run(plan) {
    const tally = new Tally();
    const { house, dose, timed } = plan;
    const folder = folderInRun('backups');
    for (let i = 0; i < dose; i++) {
      const scene = await setScene(house, timed ? 2_000 : 400, SCENE_SEED);
      await house.work('queue');
      const recheckId = await publish(house, scene);
      await midWork(house, recheckId);
      const file = join(folder, `${i}.tar.gz`);
      const made = await makeBackup(house.url, file);
      if (!made.ok) throw new Error(made.problem);
      await house.rest();
      await house.flushRedis();
      await restoredGoesOn(plan, tally, scene, { recheckId, file });
      await house.work('queue');
      await checkNothingLost(plan, tally, scene, recheckId);
      await house.rest();
    }
    return tally.report();
  },
};

async function restoredGoesOn(
  { house, patienceMs }: FaultPlan,
  tally: Tally,
  scene: Scene,
  { recheckId, file }: { readonly recheckId: number; readonly file: string },
): Promise<void> {
  const name = `restored_${scene.bulletinId}`;
  await house.pool.query(`CREATE DATABASE ${name} TEMPLATE template0`);
  const url = withDatabaseName(house.url, name);
  const begun = Date.now();
  const restored = await restoreBackup(url, file);
  if (!restored.ok) throw new Error(restored.problem);
  tally.say(`put back in ${((Date.now() - begun) / 1_000).toFixed(1)} s`);
  const pool = new Pool({ connectionString: url, max: 2 });
  const store = openStore({ url, poolSize: 8, sight: 'all' });
  try {
    const stateIs = async () =>
      (await pool.query<{ state: string }>('SELECT state FROM recheck WHERE id = $1', [recheckId])).rows[0]!.state;
    tally.struck((await stateIs()) !== 'done');
    await house.work('queue', house.shop.clock, store);
    const done = await within(patienceMs, async () => (await stateIs()) === 'done');
    tally.check(done, `${scene.number}: the restored shop did not end its recheck`);
    await house.rest();
    const [is, wanted] = [await pictureOf({ pool }, scene), expectedPicture(scene.seed, scene.units.length)];
    const unlike = is.filter((line, at) => line !== wanted[at]);
    tally.check(
      unlike.length === 0,
      `${scene.number}: ${unlike.length} units of the restored shop differ: ${unlike[0]}`,
    );
    const { fault } = await verifyTrail(pool);
    tally.check(fault === null, `${scene.number}: the restored trail breaks at row ${fault?.id}: ${fault?.why}`);
  } finally {
    await house.rest();
    await house.flushRedis();
    await store.close();
    await pool.end();
    await house.pool.query(`DROP DATABASE ${name} WITH (FORCE)`);
  }
}
