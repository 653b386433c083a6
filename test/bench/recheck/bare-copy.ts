import { spawn } from 'node:child_process';
import { once } from 'node:events';
import type { Pool } from 'pg';
import type { RecheckScope } from '../../../libs/contracts';
import { copyRows, scanQuery } from '../../../libs/store';

/** What reading costs at least: by whom it was read, and the milliseconds. */
export interface BareCopy {
  readonly by: 'psql' | 'the driver';
  readonly ms: number;
}

const EVERYTHING: RecheckScope = { everything: true, areas: [], ignoresLookBack: true };

/**
 * COPY of the very columns a recheck reads of every install, thrown away as it comes: by psql where there is one,
 * otherwise by our own reading of the connection.
 */
export async function bareCopy(pool: Pool, url: string): Promise<BareCopy> {
  const query = scanQuery({ scope: EVERYTHING, fromUnit: 1, toUnit: 2_147_483_647, lookBackFrom: null }, 'UTC');
  const begun = performance.now();
  if (await bySql(url, query)) return { by: 'psql', ms: performance.now() - begun };
  const client = await pool.connect();
  try {
    const again = performance.now();
    await copyRows(client, query, () => undefined);
    return { by: 'the driver', ms: performance.now() - again };
  } finally {
    client.release();
  }
}

async function bySql(url: string, query: string): Promise<boolean> {
  const child = spawn('psql', [url, '-X', '-q', '-c', `COPY (${query}) TO STDOUT`], { stdio: 'ignore' });
  try {
    const [code] = (await once(child, 'exit')) as [number | null];
    return code === 0;
  } catch {
    return false;
  }
}
