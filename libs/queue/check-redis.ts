import { Redis } from 'ioredis';

/** Why a Redis cannot be used, in one sentence. */
export class RedisRefused extends Error {}

const PATIENCE_MS = 10_000;

/**
 * Looks at the Redis before anything relies on it. It must answer, and it must never throw keys away to make room:
 * a queue that forgets is worse than one that says it is full.
 */
export async function checkRedis(url: string): Promise<void> {
  const redis = new Redis(url, { lazyConnect: true, connectTimeout: PATIENCE_MS, retryStrategy: () => null });
  redis.on('error', () => undefined);
  try {
    await redis.connect();
    const policy = /maxmemory_policy:(\S+)/.exec(await redis.info('memory'))?.[1] ?? 'not told';
    if (policy !== 'noeviction')
      throw new RedisRefused(`The Redis of REDIS_URL has maxmemory-policy '${policy}', but must have 'noeviction'.`);
  } catch (error) {
    if (error instanceof RedisRefused) throw error;
    throw new RedisRefused(`The Redis of REDIS_URL does not answer (${(error as Error).message}).`);
  } finally {
    redis.disconnect();
  }
}
