import { Agent, request } from 'node:http';

const CONNECTIONS = 10;

/** How long each of many requests took, in milliseconds, shortest first. */
export type Latencies = readonly number[];

/** The latency that nineteen of twenty requests do not exceed. */
export const p95 = (latencies: Latencies): number => latencies[Math.floor(latencies.length * 0.95)]!;

/**
 * Asks for `paths` in turn over ten connections that are kept open, each with one request under way. Throws at the first
 * answer other than 200: a refusal would be fast and prove nothing.
 */
export async function measure(
  url: string,
  cookie: string,
  paths: readonly string[],
  requests: number,
): Promise<Latencies> {
  const agent = new Agent({ keepAlive: true, maxSockets: CONNECTIONS });
  const latencies: number[] = [];
  let next = 0;
  const connection = async () => {
    while (next < requests) {
      const path = paths[next++ % paths.length]!;
      const start = performance.now();
      await get(new URL(`/api${path}`, url), cookie, agent);
      latencies.push(performance.now() - start);
    }
  };
  await Promise.all(Array.from({ length: CONNECTIONS }, connection));
  agent.destroy();
  return latencies.sort((a, b) => a - b);
}

function get(url: URL, cookie: string, agent: Agent): Promise<void> {
  return new Promise((resolve, reject) => {
    const asking = request(url, { agent, headers: { cookie } }, (answer) => {
      answer.resume();
      answer.once('end', () =>
        answer.statusCode === 200 ? resolve() : reject(new Error(`GET ${url.pathname} answered ${answer.statusCode}`)),
      );
    });
    asking.once('error', reject).end();
  });
}
