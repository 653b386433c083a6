import fc from 'fast-check';
import type { Fault, FaultPlan, Tally } from '../fault';
import { OddClient } from '../malformed/odd-client';
import { OddShop, type OddRole } from '../malformed/odd-shop';
import { oddRoutes, type OddRequest } from '../malformed/requests';
import type { Weight } from '../weighed';

const FIXED_SEED = 16;
const AT_ONCE = 6;
const MOST_TOLD = 40;
/** Of a hundred answers, the slowest but one; the figure of the whole dose. */
const P99_MS = 500;

/**
 * F16: requests that are wrong in every way fast-check comes by are made of every route of the API's own document: one
 * half from a seed that never changes, one half from this run's. None is answered with a 5xx, the process stays the same,
 * and what it took of the memory it gives back: after all requests it holds at most a tenth more than after the first
 * half, which filled what is kept on purpose. Held is what is in use right after a collection; what the machine has given
 * the process says little about that, since the language keeps room for later, and is told beside it.
 */
export const malformedRequests: Fault = {
  id: 'F16',
  title: 'malformed requests of every route',
  full: 100_000,
  short: 3_000,
  async run(plan, tally) {
    const shop = await OddShop.open(plan.house);
    try {
      const seeds = [FIXED_SEED, plan.draw.below(2 ** 31)];
      tally.say(`seeds ${seeds.join(' and ')}`);
      await new Sender(plan, tally, shop).send(seeds);
    } finally {
      await shop.close();
    }
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
    tally.whole = each * seeds.length * routes.length;
    const weights = [await shop.weigh()];
    const begun = performance.now();
    for (const seed of seeds) {
      const asked = routes.map(({ id, as, requests }, n) =>
        fc.sample(requests, { seed: seed + n, numRuns: each }).map((request) => ({ id, as, request })),
      );
      // Route after route in turn, so that each is asked while all the others are.
      const inTurn = Array.from({ length: each }, (_, i) => asked.map((ofRoute) => ofRoute[i]!)).flat();
      for (const half of halves(inTurn)) {
        await this.sendAll(half);
        if (shop.isRunning) weights.push(await shop.weigh());
      }
    }
    const perSecond = this.times.length / ((performance.now() - begun) / 1_000);
    this.client.close();
    tally.say(`${routes.length} routes, ${each * seeds.length} requests each, ${perSecond.toFixed(0)} a second`);
    for (const problem of [...this.broken.values()].slice(0, MOST_TOLD)) tally.check(false, problem);
    if (this.broken.size > 0) tally.say(`the API wrote: ${shop.log.join('').slice(-3_000)}`);
    tally.check(shop.isRunning, `the API ended: ${shop.log.join('').slice(-2_000)}`);
    this.checkTimes(plan.timed);
    if (shop.isRunning) checkWeights(tally, weights);
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

  private checkTimes(timed: boolean): void {
    const sorted = this.times.sort((a, b) => a - b);
    const p99 = sorted[Math.floor(sorted.length * 0.99)] ?? 0;
    const counts = [...this.statuses].sort(([a], [b]) => a - b).map(([status, n]) => `${status} ${n}x`);
    this.tally.say(`${counts.join(', ')}, p99 ${p99.toFixed(0)} ms`);
    if (timed) this.tally.check(p99 < P99_MS, `one answer of a hundred took ${p99.toFixed(0)} ms or longer`);
  }
}

function halves<T>(all: readonly T[]): readonly (readonly T[])[] {
  const middle = Math.ceil(all.length / 2);
  return [all.slice(0, middle), all.slice(middle)];
}

/** `weights` are those of the beginning and of each quarter's end. */
function checkWeights(tally: Tally, weights: readonly Weight[]): void {
  const held = weights.map(({ heap, outside }) => heap + outside);
  const given = weights.map(({ resident }) => resident);
  const told = (all: readonly number[]) => all.map((one) => one.toFixed(1)).join(', ');
  tally.say(`MiB held at the beginning and after each quarter ${told(held)}; given by the machine ${told(given)}`);
  const [warm, last] = [held[2]!, held.at(-1)!];
  tally.check(
    last <= warm * 1.1,
    `the API holds ${last.toFixed(1)} MiB, and held ${warm.toFixed(1)} after the first half`,
  );
}
