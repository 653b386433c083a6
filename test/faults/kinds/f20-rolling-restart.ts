import { once } from 'node:events';
import type { ChildProcess } from 'node:child_process';
import { freePort } from '../../../libs/store/embedded';
import { bulletin, rule } from '../../recheck/small-shop';
import { signIn } from '../at-the-counter';
import { checkTimes, disturb, pause } from '../disturb';
import type { Fault, Tally } from '../fault';
import { checkStillAlive } from '../nothing-lost';
import type { House } from '../house';

/**
 * F20: workers and API processes are asked to end, one after the other, while another takes over: a worker finishes what
 * it has begun, and no request that was taken goes without its answer.
 */
export const rollingRestart: Fault = {
  id: 'F20',
  title: 'workers and API restarted one by one',
  full: 50,
  short: 2,
  async run(plan, tally) {
    const { house } = plan;
    const workers = [await house.workerProcess(), await house.workerProcess()];
    const counter = await Counter.open(house);
    const [ofWorkers, ofApi]: [number[], number[]] = [[], []];
    await disturb(plan, tally, { units: 800, perScene: 4 }, async () => {
      ofWorkers.push(await ended(tally, 'worker', workers.shift()!));
      workers.push(await house.workerProcess());
      ofApi.push(await counter.restartNext(tally));
    });
    const { answered, again, failed } = await counter.close();
    tally.check(answered > 0, 'no request was answered');
    tally.check(failed.length === 0, `${failed.length} requests failed: ${failed[0]}`);
    tally.say(`${answered} requests answered, ${again} of them by the other API after a connection that was not taken`);
    await checkStillAlive(plan, tally);
    checkTimes(plan, tally, 'worker ended within', ofWorkers, 25_000);
    checkTimes(plan, tally, 'API ended within', ofApi, 25_000);
  },
};

async function ended(tally: Tally, what: string, child: ChildProcess): Promise<number> {
  const at = Date.now();
  child.kill('SIGTERM');
  const [code] = (await once(child, 'exit')) as [number | null];
  tally.check(code === 0, `a ${what} that was asked to end ended with ${code}`);
  return Date.now() - at;
}

const CLIENTS = 4;
/** Nobody listens there, or the one who listened ended before he took the connection. */
const NOT_TAKEN = new Set(['ECONNREFUSED', 'ECONNRESET']);

/**
 * Two API processes and people who ask them in turn, and ask the other when one takes no connection. A connection that
 * the system had taken for an API which ended before it could is reset, so a change carries a key: whoever hears
 * nothing asks again under the same one, and it is done once.
 */
class Counter {
  private open = true;
  private turn = 0;
  private answered = 0;
  private again = 0;
  private drafts = 0;
  private saved = 0;
  private readonly round = Date.now();
  private readonly failed: string[] = [];
  private clients: Promise<unknown> = Promise.resolve();

  private constructor(
    private readonly house: House,
    private readonly apis: { readonly port: number; child: ChildProcess }[],
    private readonly cookie: string,
  ) {}

  static async open(house: House): Promise<Counter> {
    const ports = [await freePort(), await freePort()];
    const apis = await Promise.all(ports.map(async (port) => ({ port, child: await house.apiProcess(port) })));
    const counter = new Counter(house, apis, await signIn(house, `http://127.0.0.1:${ports[0]}`));
    counter.clients = Promise.all(Array.from({ length: CLIENTS }, () => counter.askOnAndOn()));
    return counter;
  }

  async restartNext(tally: Tally): Promise<number> {
    const api = this.apis[this.turn++ % this.apis.length]!;
    const took = await ended(tally, 'API', api.child);
    api.child = await this.house.apiProcess(api.port);
    return took;
  }

  async close(): Promise<{ readonly answered: number; readonly again: number; readonly failed: readonly string[] }> {
    this.open = false;
    await this.clients;
    for (const { child } of this.apis) child.kill('SIGKILL');
    const { rows } = await this.house.pool.query<{ n: number }>(
      'SELECT count(*)::int AS n FROM source WHERE number LIKE $1',
      [`RR-${this.round}-%`],
    );
    // What was answered with a yes is there, once; and nothing else is.
    if (rows[0]!.n !== this.saved) this.failed.push(`${rows[0]!.n} drafts are there, ${this.saved} were acknowledged`);
    return { answered: this.answered, again: this.again, failed: this.failed };
  }

  private async askOnAndOn(): Promise<void> {
    for (let n = 0; this.open; n++) {
      await this.ask(n).catch((error: unknown) => this.failed.push(String(error)));
      await pause(10);
    }
  }

  /** Reads and, every fourth time, a change. What was not taken is asked of the other, a change under the same key. */
  private async ask(n: number): Promise<void> {
    const change = n % 4 === 0 ? ++this.drafts : undefined;
    for (let tries = 0; ; tries++) {
      const { port } = this.apis[(n + tries) % this.apis.length]!;
      try {
        const answer = await this.request(port, change);
        await answer.text();
        if (!answer.ok) this.failed.push(`${answer.url} answered ${answer.status}`);
        else if (change !== undefined) this.saved++;
        this.answered++;
        if (tries > 0) this.again++;
        return;
      } catch (error) {
        const { cause } = error as { cause?: { code?: string } };
        if (!NOT_TAKEN.has(cause?.code ?? '') || tries >= 100)
          throw new Error(`${String(error)}: ${String(cause?.code)}`, { cause: error });
        await pause(20);
      }
    }
  }

  private request(port: number, change: number | undefined): Promise<Response> {
    const at = `http://127.0.0.1:${port}/api`;
    const headers = { cookie: this.cookie, connection: 'close', 'content-type': 'application/json' };
    if (change === undefined) return fetch(`${at}/rechecks`, { headers });
    const name = `RR-${this.round}-${change}`;
    const draft = bulletin(name, [rule(`FR-${name}`, { required: 'HOLM/B' })]);
    return fetch(`${at}/bulletins`, {
      method: 'POST',
      headers: { ...headers, 'idempotency-key': name },
      body: JSON.stringify(draft),
    });
  }
}
