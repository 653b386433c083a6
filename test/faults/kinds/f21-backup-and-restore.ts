import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { Pool } from 'pg';
import { makeBackup, openStore, restoreBackup, verifyTrail, withDatabaseName } from '../../../libs/store';
import { folderInRun } from '../../../libs/testing';
import { SCENE_SEED } from '../disturb';
import type { Fault, FaultPlan, Tally } from '../fault';
import { House } from '../house';
import { checkNothingLost, midWork, within } from '../nothing-lost';
import { expectedPicture, pictureOf, publish, setScene, type Scene } from '../scene';

/** What a full shop holds before the scene is set, and how long it may take to put it back. */
const TICKETS = 100_000;
const AT_ONCE = 5_000;
const LONGEST_RESTORE_MS = 600_000;

/**
 * F21: a backup is taken in mid-work, and put into an empty database with an empty Redis; both shops then end their
 * work. In its whole dose the shop is a full one.
 */
export const backupAndRestore: Fault = {
  id: 'F21',
  title: 'backed up in mid-work, and put back',
  full: 10,
  short: 1,
  async run(plan, tally) {
    if (!plan.timed) return backedUpAndPutBack(plan, tally);
    // Of its own, so that the faults after this one find the house as small as those before.
    const house = await House.open();
    try {
      await fill(house);
      await backedUpAndPutBack({ ...plan, house }, tally);
    } finally {
      await house.close();
    }
  },
};

async function backedUpAndPutBack(plan: FaultPlan, tally: Tally): Promise<void> {
  const { house, dose, timed } = plan;
  const folder = folderInRun('backups');
  for (let i = 0; i < dose; i++) {
    const scene = await setScene(house, timed ? 2_000 : 400, SCENE_SEED);
    await house.work('queue');
    const recheckId = await publish(house, scene);
    await midWork(house, recheckId);
    const file = join(folder, `${i}.tar.gz`);
    const begun = Date.now();
    const made = await makeBackup(house.url, file);
    if (!made.ok) throw new Error(made.problem);
    tally.say(`${made.manifest.trail.rows} rows in the trail, backed up in ${seconds(Date.now() - begun)} s`);
    await house.rest();
    await house.flushRedis();
    await restoredGoesOn(plan, tally, scene, { recheckId, file });
    await house.work('queue');
    await checkNothingLost(plan, tally, scene, recheckId);
    await house.rest();
    await rm(file);
  }
}

/** Tickets of the past on units of their own, written as the programs write: the trail has a row for each change. */
async function fill({ shop, pool }: House): Promise<void> {
  for (let n = 0; n < TICKETS; n += AT_ONCE) await shop.many(AT_ONCE, '2020-03-02', ['2015-01-01', '2015-06-01']);
  await pool.query('ANALYZE');
}

const seconds = (ms: number): string => (ms / 1_000).toFixed(1);

async function restoredGoesOn(
  { house, patienceMs, timed }: FaultPlan,
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
  const taken = Date.now() - begun;
  tally.say(`put back in ${seconds(taken)} s`);
  if (timed) tally.check(taken <= LONGEST_RESTORE_MS, `${scene.number}: it took ${seconds(taken)} s to put back`);
  const pool = new Pool({ connectionString: url, max: 2 });
  const store = openStore({ url, poolSize: 8, sight: 'all' });
  try {
    const stateIs = async () =>
      (await pool.query<{ state: string }>('SELECT state FROM recheck WHERE id = $1', [recheckId])).rows[0]!.state;
    tally.struck((await stateIs()) !== 'done');
    const behind = await sequencesBehind(pool);
    tally.check(behind.length === 0, `${scene.number}: the next number of ${behind.join(', ')} is taken already`);
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

/** Columns whose sequence would hand out a number that a row has. */
async function sequencesBehind(pool: Pool): Promise<readonly string[]> {
  const { rows: owned } = await pool.query<{ table: string; column: string; sequence: string }>(
    `SELECT c.relname AS "table", a.attname AS "column", pg_get_serial_sequence(quote_ident(c.relname), a.attname) AS sequence
     FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
     WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'
       AND pg_get_serial_sequence(quote_ident(c.relname), a.attname) IS NOT NULL`,
  );
  if (owned.length === 0) throw new Error('no column has a sequence, so none was looked at');
  const behind: string[] = [];
  for (const { table, column, sequence } of owned) {
    const { rows } = await pool.query<{ taken: boolean }>(
      `SELECT (SELECT max("${column}") FROM "${table}")
         >= (SELECT CASE WHEN is_called THEN last_value + 1 ELSE last_value END FROM ${sequence}) AS taken`,
    );
    if (rows[0]!.taken) behind.push(`${table}.${column}`);
  }
  return behind;
}
