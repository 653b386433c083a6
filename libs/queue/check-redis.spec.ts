import { Redis } from 'ioredis';
import { withRedis } from '../testing';
import { checkRedis } from './check-redis';

const redis = withRedis();

describe('checkRedis', () => {
  it('takes a Redis that never throws keys away, and refuses one that may', async () => {
    await expect(checkRedis(redis.url)).resolves.toBeUndefined();
    const client = new Redis(redis.url);
    await client.config('SET', 'maxmemory-policy', 'allkeys-lru');
    await client.quit();
    await expect(checkRedis(redis.url)).rejects.toThrow(
      "The Redis of REDIS_URL has maxmemory-policy 'allkeys-lru', but must have 'noeviction'.",
    );
  });

  it('says in one sentence that nobody answers', async () => {
    await expect(checkRedis('redis://127.0.0.1:1')).rejects.toThrow('The Redis of REDIS_URL does not answer');
  });
});
