import type { RunningApi } from '../../../apps/api/src/start-api';
import { openApi, signIn } from '../at-the-counter';
import { CODES, Contention, type Contended } from '../contention';
import { disturb } from '../disturb';
import type { Fault, FaultPlan, Tally } from '../fault';
import { checkStillAlive, within } from '../nothing-lost';

/** One less than the tries of the store: that many are never the client's business. */
const HIDDEN = 4;
const FOR_EVER = 1_000_000;
const AT_ONCE = 4;

/**
 * F9: the database ends transactions with serialization failures and deadlocks. Up to four in a row nobody hears of;
 * when it never stops, the answer is 503 with a time to ask again and nothing is there. Asked again under the same key,
 * it is there once. Chunks of a recheck come to their end all the same.
 */
export const madeToTryAgain: Fault = {
  id: 'F9',
  title: 'transactions ended as contended',
  full: 1_000,
  short: 10,
  async run(plan, tally) {
    const contention = await Contention.open(plan.house);
    const api = await openApi(plan.house);
    try {
      const counter = new Counter(plan, tally, contention, api, await signIn(plan.house, api.url));
      await counter.whileRequestsCome(Math.ceil(plan.dose / 2));
      await whileJudging(plan, tally, contention, Math.floor(plan.dose / 2));
      await checkStillAlive(plan, tally);
    } finally {
      await api.close();
      await contention.close();
    }
  },
};

interface Heard {
  readonly status: number;
  readonly retryAfter: string | null;
  readonly body: { readonly id?: number; readonly version?: number; readonly type?: string };
}

/** Somebody who opens tickets and changes what their tags say while transactions fail. */
class Counter {
  private n = 0;

  constructor(
    private readonly plan: FaultPlan,
    private readonly tally: Tally,
    private readonly contention: Contention,
    private readonly api: RunningApi,
    private readonly cookie: string,
  ) {}

  async whileRequestsCome(failures: number): Promise<void> {
    const { draw } = this.plan;
    let [hidden, spent] = [0, 0];
    while (hidden + spent < failures) {
      const code = draw.oneOf(CODES);
      const times = 1 + draw.below(HIDDEN);
      const place = draw.oneOf<Contended>(['ticket', 'kept_answer', 'audit_entry']);
      await this.contention.arm(place, code, times);
      await Promise.all(Array.from({ length: AT_ONCE }, () => this.openedAndChanged()));
      hidden += await this.counted(`${place} ${code}`, times);
      if (hidden % 5 === 0 || spent === 0) spent += await this.untilSpent(place, code);
    }
    this.tally.say(`${hidden} failures hidden and ${spent} told by 503 at the counter`);
  }

  /** However many have failed, each counts as one. */
  private async counted(what: string, times: number): Promise<number> {
    const failed = await this.contention.failed();
    this.tally.check(failed === times, `${failed} of ${times} failures came about at ${what}`);
    for (let i = 0; i < failed; i++) this.tally.struck(true);
    return failed;
  }

  private async openedAndChanged(): Promise<void> {
    const name = `contended ${this.plan.house.door.port}-${this.n++}`;
    const opened = await this.open(name);
    this.tally.check(opened.status === 201, `opening was answered with ${JSON.stringify(opened)}`);
    const { id, version } = opened.body;
    const changed = await this.ask(
      'PATCH',
      `/tickets/${id}`,
      `${name} tag`,
      { complaint: `${name}, changed` },
      version,
    );
    this.tally.check(
      changed.status === 200 && changed.body.version === version! + 1,
      `a change was answered with ${JSON.stringify(changed)}`,
    );
    await this.checkThere(`${name}, changed`, 1);
    await this.checkThere(name, 0);
  }

  /** Every try fails: the client hears 503, nothing is there; asked again under the same key, it is there once. */
  private async untilSpent(place: Contended, code: string): Promise<number> {
    const name = `spent ${this.n++}`;
    await this.contention.arm(place, code, FOR_EVER);
    const refused = await this.open(name);
    this.tally.check(
      refused.status === 503 && Number(refused.retryAfter) > 0 && refused.body.type === 'database-busy',
      `with every try spent at ${place} the answer was ${JSON.stringify(refused)}`,
    );
    const failed = await this.contention.failed();
    this.tally.check(failed >= HIDDEN + 1, `only ${failed} tries were made`);
    await this.contention.disarm();
    await this.checkThere(name, 0);
    for (let i = 0; i < failed; i++) this.tally.struck(true);
    const again = await this.open(name);
    this.tally.check(again.status === 201, `asked again, the answer was ${JSON.stringify(again)}`);
    const kept = await this.open(name);
    this.tally.check(kept.body.id === again.body.id, 'the same key opened a second ticket');
    await this.checkThere(name, 1);
    return failed;
  }

  private open(name: string): Promise<Heard> {
    return this.ask('POST', '/tickets', `${name} opening`, {
      owner: { name: 'Ole Brand', phone: '555 0101', consent: true },
      unit: { lineCode: 'TL-40', modelNumber: '40A', serial: null, serialAbsent: 'plate gone', plate: 'TL-40' },
      complaint: name,
    });
  }

  private async ask(method: string, path: string, key: string, body: object, version?: number): Promise<Heard> {
    const answer = await fetch(`${this.api.url}/api${path}`, {
      method,
      headers: {
        cookie: this.cookie,
        'content-type': 'application/json',
        'idempotency-key': key.replace(/\W/g, '-'),
        ...(version === undefined ? {} : { 'if-match': `"${version}"` }),
      },
      body: JSON.stringify(body),
    });
    const { status, headers } = answer;
    return { status, retryAfter: headers.get('retry-after'), body: (await answer.json()) as Heard['body'] };
  }

  private async checkThere(complaint: string, times: number): Promise<void> {
    const { rows } = await this.plan.house.pool.query('SELECT 1 FROM ticket WHERE complaint = $1', [complaint]);
    this.tally.check(rows.length === times, `'${complaint}' is there ${rows.length} times and not ${times}`);
  }
}

/** Chunks under way lose some tries, or all of them for a while. */
async function whileJudging(plan: FaultPlan, tally: Tally, contention: Contention, strikes: number): Promise<void> {
  const { draw, house } = plan;
  let failures = 0;
  await house.work('alone');
  await disturb({ ...plan, dose: strikes }, tally, { units: 800, perScene: 4 }, async () => {
    const place = draw.oneOf<Contended>(['verdict_change', 'callback', 'recheck_chunk', 'audit_entry']);
    await contention.arm(place, draw.oneOf(CODES), 1 + draw.below(3 * HIDDEN));
    await within(2_000, async () => (await contention.failed()) > 0);
    failures += await contention.failed();
  });
  await contention.disarm();
  tally.say(`${failures} failures while chunks were judged`);
}
