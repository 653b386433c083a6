import { withDatabase } from '../testing';
import { WalledPool } from './walled-pool';

const db = withDatabase();

describe('a connection that is lent', () => {
  it('may be closed by the server between two questions: the next one is refused, and the pool opens another', async () => {
    const pool = new WalledPool({ connectionString: db.url, max: 1 }, 'all');
    pool.on('error', () => undefined);
    db.beforeClose(() => pool.end());
    const lent = await pool.connect();
    let pid: number | undefined;
    try {
      const { rows } = await lent.query<{ pid: number }>('SELECT pg_backend_pid() AS pid');
      pid = rows[0]!.pid;
      // Not events.once: it would listen for 'error' itself, and so hide the very thing looked for.
      const ended = new Promise<void>((resolve) => lent.once('end', () => resolve()));
      await db.pool.query('SELECT pg_terminate_backend($1)', [pid]);
      await ended;
      await expect(lent.query('SELECT 1')).rejects.toThrow();
    } finally {
      lent.release();
    }
    const another = await pool.query<{ pid: number }>('SELECT pg_backend_pid() AS pid');
    expect(another.rows[0]!.pid).not.toBe(pid);
  });
});
