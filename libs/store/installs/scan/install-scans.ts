import type { Pool, PoolClient } from 'pg';
import { SCANNED_COLUMNS, StoreOutage, type InstallScans } from '../../../usecases';
import { isOutage } from '../../retryable';
import { NumberRows } from './number-rows';
import { scanInstalls } from './scan-installs';

/**
 * Scans go through a pool of their own: a transaction that waits for a scan holds a connection, and must not wait for
 * one that another such transaction holds. Nor does looking at a scan hold one. The room for rows is kept, since that
 * much made anew for each chunk would have all memory of the process looked through several times a recheck.
 */
export function installScans(pool: Pool, zone: string): InstallScans {
  const rooms: NumberRows[] = [];
  return {
    async scan(choice, look) {
      const rows = rooms.pop()?.cleared() ?? new NumberRows(SCANNED_COLUMNS);
      // Where it fails, what is still on its way may be written into the rows: they are not used again.
      const answer = await look(await borrowed(pool, (client) => scanInstalls(client, choice, zone, rows)));
      rooms.push(rows);
      return answer;
    },
    positions: () =>
      borrowed(pool, async (client) => {
        const { rows } = await client.query<{ id: number; line: string; position: string }>(
          'SELECT p.id, l.code AS line, p.code AS position FROM position p JOIN product_line l ON l.id = p.line_id',
        );
        return new Map(rows.map(({ id, line, position }) => [id, { line, position }]));
      }),
    partKeys: (ids) =>
      borrowed(pool, async (client) => {
        const { rows } = await client.query<{ id: number; key: string }>(
          'SELECT id, key FROM part WHERE id = ANY($1)',
          [ids],
        );
        return new Map(rows.map(({ id, key }) => [id, key]));
      }),
  };
}

/** A connection for the length of the work; one whose work broke off is not used again. */
async function borrowed<T>(pool: Pool, work: (client: PoolClient) => Promise<T>): Promise<T> {
  let client: PoolClient | undefined;
  // A line that is cut while nobody asks anything of it must not end the program.
  const unheard = () => undefined;
  try {
    client = await pool.connect();
    client.on('error', unheard);
    const answer = await work(client);
    client.off('error', unheard);
    client.release();
    return answer;
  } catch (error) {
    client?.release(true);
    throw isOutage(error) ? new StoreOutage(error) : error;
  }
}
