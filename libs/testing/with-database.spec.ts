import { Client } from 'pg';
import { openDatabase, withDatabase, withRedis } from './index';

describe('a private database', () => {
  const database = withDatabase();
  const empty = withDatabase({ empty: true });

  it('is migrated', async () => {
    const { rows } = await database.pool.query('SELECT count(*)::int AS n FROM _prisma_migrations');
    expect(rows).toEqual([{ n: expect.any(Number) as number }]);
  });

  it('is without any table when asked for empty', async () => {
    const { rows } = await empty.pool.query(`SELECT * FROM pg_tables WHERE schemaname = 'public'`);
    expect(rows).toEqual([]);
  });

  it('shares nothing with another one of the same file', async () => {
    await empty.pool.query('CREATE TABLE only_here ()');
    const { rows } = await database.pool.query(`SELECT * FROM pg_tables WHERE tablename = 'only_here'`);
    expect(rows).toEqual([]);
  });

  it('closes what uses it first, the last one given before the others', async () => {
    const other = await openDatabase({ empty: true });
    const closed: string[] = [];
    other.beforeClose(() => closed.push('pool'));
    other.beforeClose(() => closed.push('app on it'));
    await other.close();
    expect(closed).toEqual(['app on it', 'pool']);
  });

  it('is gone after closing, and a connection left open is named', async () => {
    const other = await openDatabase({ empty: true });
    const forgotten = new Client({ connectionString: other.url, application_name: 'forgotten' });
    forgotten.on('error', () => undefined);
    await forgotten.connect();
    await forgotten.query('SELECT 42');
    await expect(other.close()).rejects.toThrow(/left open: forgotten SELECT 42/);
    await expect(new Client({ connectionString: other.url }).connect()).rejects.toThrow(/does not exist/);
  });
});

describe('a private Redis', () => {
  const redis = withRedis();

  it('listens on a port of its own, not on the usual one', () => {
    expect(redis.port).not.toBe(6379);
    expect(redis.url).toContain(`:${redis.port}`);
  });
});
