import { fork } from 'node:child_process';
import { once } from 'node:events';
import { Agent, request } from 'undici';

/** What is asked, over and over. */
export interface LoadRequest {
  readonly url: string;
  readonly method: 'GET' | 'POST';
  readonly headers: Readonly<Record<string, string>>;
  /** Each is asked in its turn. */
  readonly bodies?: readonly string[];
  readonly seconds: number;
}

export interface LoadAnswer {
  readonly perSecond: number;
  readonly p99Ms: number;
  /** Answers with a status of 400 or more. */
  readonly refused: number;
}

const CONNECTIONS = 10;

/** Asks over ten connections from a process of its own, so that only the answering is on the server's thread. */
export async function load(asked: LoadRequest): Promise<LoadAnswer> {
  const child = fork(__filename);
  child.send(asked);
  const [answer] = (await once(child, 'message')) as [LoadAnswer];
  child.kill();
  return answer;
}

async function ask({ url, method, headers, bodies, seconds }: LoadRequest): Promise<LoadAnswer> {
  const dispatcher = new Agent({ connections: CONNECTIONS });
  const took: number[] = [];
  let [refused, asked] = [0, 0];
  const begun = performance.now();
  const until = begun + seconds * 1_000;
  const line = async () => {
    while (performance.now() < until) {
      const from = performance.now();
      const body = bodies?.[asked++ % bodies.length];
      const answer = await request(url, { method, headers, body, dispatcher });
      await answer.body.text();
      took.push(performance.now() - from);
      if (answer.statusCode >= 400) refused++;
    }
  };
  await Promise.all(Array.from({ length: CONNECTIONS }, line));
  took.sort((a, b) => a - b);
  const perSecond = took.length / ((performance.now() - begun) / 1_000);
  return { perSecond, p99Ms: took[Math.floor(took.length * 0.99)] ?? 0, refused };
}

if (require.main === module) {
  process.once('message', (asked: LoadRequest) => {
    void ask(asked).then((answer) => process.send!(answer));
  });
}
