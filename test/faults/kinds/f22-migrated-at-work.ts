import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { Pool } from 'pg';
import { repoRoot } from '../../../libs/config';
import { migrationNames, prismaFolder, withDatabaseName } from '../../../libs/store/migrate';
import { noteProcess } from '../../../libs/testing';
import type { Fault, FaultPlan, Tally } from '../fault';
import { fillDatabase, migrationsUpTo, RELEASED } from '../full-shop';
import { ShopAtWork } from '../shop-at-work';

const LONGEST_WAIT_MS = 1_000;
const MOST_STARTS = 6;

/**
 * F22: a full shop is migrated from what an older program left while it works, and whoever migrates is killed in the
 * middle. Nobody at work gets an error or waits long for a lock, and a new start takes it to the end.
 */
export const migratedAtWork: Fault = {
  id: 'F22',
  title: 'migrated at work, and killed meanwhile',
  full: 10,
  short: 1,
  async run(plan, tally) {
    const { house, timed, dose } = plan;
    tally.whole = RELEASED.length * dose;
    const names = migrationNames(prismaFolder());
    const newest = migrationsUpTo(names, null);
    for (const last of RELEASED) {
      const [tickets, trail] = timed ? [100_000, 1_000_000] : [500, 5_000];
      const folder = migrationsUpTo(names, last);
      await fillDatabase(house.pool, house.url, { name: 'full_shop', folder, tickets, trail });
      let longest = 0;
      for (let i = 0; i < dose; i++)
        longest = Math.max(longest, await oneRound(plan, tally, { newest, tickets, trail, round: i }));
      tally.say(`from ${last.slice(0, 14)}: longest wait for a lock ${longest} ms`);
      await house.pool.query('DROP DATABASE full_shop WITH (FORCE)');
    }
  },
};

interface Round {
  readonly newest: string;
  readonly tickets: number;
  readonly trail: number;
  readonly round: number;
}

/** One copy of the full shop, migrated at work with one kill. Answers the longest wait for a lock, in milliseconds. */
async function oneRound(
  { house, draw, timed }: FaultPlan,
  tally: Tally,
  { newest, tickets, trail, round }: Round,
): Promise<number> {
  const name = `full_shop_${round}`;
  await house.pool.query(`CREATE DATABASE ${name} TEMPLATE full_shop`);
  const url = withDatabaseName(house.url, name);
  const pool = new Pool({ connectionString: url, max: 2 });
  pool.on('error', () => undefined);
  const begun = await begunIn(pool);
  const wanted = migrationNames(newest).length;
  const atWork = new ShopAtWork(url, tickets, timed ? 2_000 : 30_000);
  try {
    await pause(timed ? 1_000 : 100);
    const first = migrating(url, newest);
    const stopAt = begun + 1 + draw.below(wanted - begun);
    while (first.exitCode === null && (await begunIn(pool)) < stopAt) await pause(1);
    await pause(draw.below(20));
    const mid = first.exitCode === null;
    first.kill('SIGKILL');
    if (mid) await once(first, 'exit');
    tally.struck(mid);
    const starts = await toTheEnd(url, newest);
    tally.check(starts <= MOST_STARTS, `${name}: no start took the migration to its end`);
    await pause(timed ? 1_000 : 100);
    const { errors, written, longestWaitMs, lateMs } = await atWork.stop();
    tally.check(errors.length === 0, `${name}: ${errors.length} requests failed: ${errors[0]}`);
    if (timed)
      tally.check(
        longestWaitMs <= LONGEST_WAIT_MS,
        `${name}: somebody waited ${longestWaitMs} ms for a lock (${lateMs} ms in all)`,
      );
    const { rows } = await pool.query<{
      migrations: number;
      tickets: number;
      written: number;
      trail: number;
      halfMade: number;
    }>(
      `SELECT (SELECT count(*)::int FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL) AS migrations,
              (SELECT count(*)::int FROM ticket) AS tickets, (SELECT count(*)::int FROM ticket_event) AS written,
              (SELECT count(*)::int FROM audit_entry WHERE id <= $1) AS trail,
              (SELECT count(*)::int FROM pg_index WHERE NOT indisvalid) AS "halfMade"`,
      [trail],
    );
    const expected = JSON.stringify({ migrations: wanted, tickets, written, trail, halfMade: 0 });
    tally.check(JSON.stringify(rows[0]) === expected, `${name}: found ${JSON.stringify(rows[0])} and not ${expected}`);
    return longestWaitMs;
  } finally {
    await atWork.stop();
    await pool.end();
    await house.pool.query(`DROP DATABASE ${name} WITH (FORCE)`);
  }
}

/** How many migrations were begun. */
async function begunIn(pool: Pool): Promise<number> {
  const { rows } = await pool.query<{ n: number }>('SELECT count(*)::int AS n FROM _prisma_migrations');
  return rows[0]!.n;
}

/** Starts again until one start ends well; answers how many it took. */
async function toTheEnd(url: string, folder: string): Promise<number> {
  for (let starts = 1; starts <= MOST_STARTS; starts++) {
    const child = migrating(url, folder);
    const [code] = (await once(child, 'exit')) as [number | null];
    if (code === 0) return starts;
  }
  return MOST_STARTS + 1;
}

function migrating(url: string, folder: string): ChildProcess {
  const child = spawn(process.execPath, [join(repoRoot(), 'dist', 'test', 'faults', 'migrating.js')], {
    env: { PATH: process.env['PATH'], DATABASE_URL: url, PRISMA_FOLDER: folder },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  if (child.pid !== undefined) noteProcess(child.pid);
  return child;
}
