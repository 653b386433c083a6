import fc from 'fast-check';
import { pause } from '../disturb';
import { Tally, type Fault, type FaultPlan } from '../fault';
import { OddClient } from '../malformed/odd-client';
import { OddShop, type OddRole } from '../malformed/odd-shop';
import { oddRoutes, type OddRequest } from '../malformed/requests';

const FIXED_SEED = 16;
const AT_ONCE = 6;
const MOST_TOLD = 40;

/**
 * F16: requests that are wrong in every way fast-check comes by are made of every route of the API's own document: one
 * half from a seed that never changes, one half from this run's. None is answered with a 5xx, the process stays the same,
 * and what it took of the memory it gives back.
 */
export const malformedRequests: Fault = {
  id: 'F16',
  title: 'malformed requests of every route',
  full: 100_000,
  short: 3_000,
  async run(plan) {
    const tally = new Tally();
    const shop = await OddShop.open(plan.house);
    try {
      const seeds = [FIXED_SEED, plan.draw.below(2 ** 31)];
      tally.say(`seeds ${seeds.join(' and ')}`);
      await new Sender(plan, tally, shop).send(seeds);
    } finally {
      await shop.close();
    }
    return tally.report();
  },
};

interface Asked {
  readonly id: string;
  readonly as: OddRole;
  readonly request: OddRequest;
}

class Sender {
  private readonly client: OddClient;
  private readonly times: number[] = [];
  private readonly statuses = new Map<number, number>();
  private readonly broken = new Map<string, string>();

  constructor(
    private readonly plan: FaultPlan,
    private readonly tally: Tally,
    private readonly shop: OddShop,
  ) {
    this.client = new OddClient(shop.port, AT_ONCE);
  }

  async send(seeds: readonly number[]): Promise<void> {
    const { plan, tally, shop } = this;
    const routes = oddRoutes(shop.document);
    const each = Math.ceil(plan.dose / seeds.length / routes.length);
    let warm: number | null = null;
    for (const seed of seeds) {
      const asked = routes.map(({ id, as, requests }, n) =>
        fc.sample(requests, { seed: seed + n, numRuns: each }).map((request) => ({ id, as, request })),
      );
      // Route after route in turn, so that each is asked while all the others are.
      const inTurn = Array.from({ length: each }, (_, i) => asked.map((ofRoute) => ofRoute[i]!)).flat();
      await this.sendAll(inTurn);
      warm ??= await this.settledMemory();
    }
    const after = await this.settledMemory();
    this.client.close();
    tally.say(`${routes.length} routes, ${each * seeds.length} requests each, ${this.told()}`);
    for (const problem of [...this.broken.values()].slice(0, MOST_TOLD)) tally.check(false, problem);
    if (this.broken.size > 0) tally.say(`the API wrote: ${shop.log.join('').slice(-3_000)}`);
    tally.check(shop.isRunning, `the API ended: ${shop.log.join('').slice(-2_000)}`);
    if (warm === null || after === null) return;
    tally.say(`memory ${warm.toFixed(0)} MiB after the first seed and ${after.toFixed(0)} after the second`);
    if (plan.timed) tally.check(after <= warm * 1.1, 'the API holds more than a tenth more memory than before');
  }

  private async sendAll(all: readonly Asked[]): Promise<void> {
    let next = 0;
    const sendOn = async () => {
      for (let one = all[next++]; one !== undefined; one = all[next++]) await this.sendOne(one);
    };
    await Promise.all(Array.from({ length: AT_ONCE }, sendOn));
  }

  private async sendOne({ id, as, request }: Asked): Promise<void> {
    try {
      const { status, text, ms } = await this.client.send(request, this.shop.cookies[as]);
      this.tally.struck(true);
      this.times.push(ms);
      this.statuses.set(status, (this.statuses.get(status) ?? 0) + 1);
      if (status >= 500) this.note(id, request, `${status} ${text}`);
      if (status === 401 && !('cookie' in request.headers) && !('authorization' in request.headers))
        await this.shop.signInAgain();
    } catch (error) {
      this.tally.struck(false);
      this.note(id, request, String(error));
    }
  }

  /** One of a kind is enough to mend it. */
  private note(id: string, { method, path, headers, body }: OddRequest, heard: string): void {
    const words = `${id}: ${method} ${path} ${JSON.stringify(headers)} ${JSON.stringify(body)}`.slice(0, 1_500);
    this.broken.set(`${id} ${heard}`, `${words} was answered with ${heard}`);
  }

  private told(): string {
    const sorted = this.times.sort((a, b) => a - b);
    const p99 = sorted[Math.floor(sorted.length * 0.99)] ?? 0;
    const counts = [...this.statuses].sort(([a], [b]) => a - b).map(([status, n]) => `${status} ${n}x`);
    return `${counts.join(', ')}, p99 ${p99.toFixed(0)} ms`;
  }

  /** The least of a few looks: what was only waiting to be collected goes meanwhile. */
  private async settledMemory(): Promise<number | null> {
    if (!this.plan.timed) return this.shop.memoryMiB();
    const looks: number[] = [];
    for (let i = 0; i < 10; i++) {
      looks.push((await this.shop.memoryMiB()) ?? Infinity);
      await pause(1_000);
    }
    return Math.min(...looks) === Infinity ? null : Math.min(...looks);
  }
}
