import type { RecheckScope } from '../../../libs/contracts';
import type { FitRuleFile } from '../../../libs/fit-rules';
import { orderRecheck, publishBulletin, saveBulletin, withdrawBulletin, type RecheckRow } from '../../../libs/usecases';
import { bulletin, HeldClock, manager, rule } from '../../recheck/small-shop';
import { finished, value } from '../../recheck/wait';
import { figure, type BenchLine } from '../bench-line';
import { bareCopy } from './bare-copy';
import { builtAt, LINES, lineCode, positionCode, POSITIONS, type BigShop } from './big-shop';

const EVERYTHING: RecheckScope = { everything: true, areas: [], ignoresLookBack: true };
const BARRED_NOWHERE = { barred: [{ part: 'HOLM/NEVER', reason: 'breaks-later' as const, note: '' }] };

/** What was measured of one kind of recheck. */
export interface Measured {
  readonly row: RecheckRow;
  /** Milliseconds from the order to the end, by the database's clock. */
  readonly ms: number;
  readonly bareMs: number;
}

/** Rechecks of a big shop, ordered as in the shop and done by whatever workers there are. */
export class RecheckBench {
  private readonly ports;
  private number = 0;

  constructor(
    private readonly shop: BigShop,
    private readonly rounds: number,
  ) {
    this.ports = { store: shop.store, clock: new HeldClock(Math.floor(Date.now() / 86_400_000)) };
  }

  /** Everything is judged again and next to nothing changes; the first time of all a thousandth does. */
  async whole(): Promise<{ readonly lines: BenchLine[]; readonly ms: number }> {
    const { rows } = this.shop;
    const first = took(await this.everything());
    const seen = await this.timed(() => this.everything());
    const [ms, by] = [median(seen.map((one) => one.ms)), (await bareCopy(this.shop.pool, this.shop.url)).by];
    const ratio = median(seen.map((one) => one.ms / one.bareMs));
    const lines = [
      figure(`bare COPY of ${rows} installs by ${by}`, Math.round(median(seen.map((one) => one.bareMs))), 'ms'),
      figure(`first recheck of ${rows} installs, ${first.row.changed} changed`, Math.round(first.ms), 'ms'),
      figure(`recheck of ${rows} installs, none changed`, Math.round(ms), 'ms'),
      figure('of it until the first chunk is under way', Math.round(median(seen.map(planMs))), 'ms'),
      figure('installs judged end to end', Math.round((rows / ms) * 1_000), 'installs/s'),
      figure('recheck with none changed against bare COPY', round2(ratio), 'times', { atMost: 1.3 }),
    ];
    return { lines, ms };
  }

  /** Whole rechecks alone, for comparing what does them. */
  async wholeMs(): Promise<number> {
    return median((await this.timed(() => this.everything())).map(({ ms }) => ms));
  }

  /** A bulletin that reaches about k installs and changes none; milliseconds. */
  async reaching(k: number): Promise<{ readonly judged: number; readonly ms: number }> {
    const seen = await this.timed(
      async () => (await this.publish(this.rules(k, this.fewestPositions(k), BARRED_NOWHERE))).row,
    );
    return { judged: seen[0]!.row.judged, ms: median(seen.map(({ ms }) => ms)) };
  }

  /** Once, as it takes long: a bulletin that changes about k installs, flags the units in the shop and calls the other owners; and its withdrawal. */
  async changing(k: number): Promise<BenchLine[]> {
    const bareMs = await this.bareMs();
    const { id, row } = await this.publish(this.rules(k, POSITIONS, { required: 'HOLM/NEW', action: 'call-back' }));
    const [there, back] = [took(row).ms, took(await this.withdraw(id)).ms];
    const { changed, flagsRaised, callbacksOpened } = row;
    const what = `bulletin that changes ${changed} installs, with ${flagsRaised} flags and ${callbacksOpened} calls`;
    const ratio = (ms: number) => round2(ms / bareMs);
    return [
      figure(what, Math.round(there), 'ms'),
      figure('the same against bare COPY', ratio(there), 'times', { atMost: 2.2 }),
      figure('its withdrawal, which takes all of it back, against bare COPY', ratio(back), 'times'),
    ];
  }

  /** A bulletin that changes about a thousand installs, until the first owner and until all are on the list. */
  async firstCall(wholeMs: number): Promise<BenchLine[]> {
    const firsts: number[] = [];
    const alls: Measured[] = [];
    for (let round = 0; round < this.rounds; round++) {
      const before = await this.calls();
      const begun = performance.now();
      const done = this.publish(this.rules(1_000, 1, { required: 'HOLM/NEW', action: 'call-back' }));
      while ((await this.calls()) === before) await new Promise((resolve) => setTimeout(resolve, 2));
      firsts.push(performance.now() - begun);
      const { id, row } = await done;
      alls.push({ ...took(row), bareMs: 0 });
      await this.withdraw(id);
    }
    const { changed, callbacksOpened } = alls[0]!.row;
    const ms = Math.round(median(alls.map((one) => one.ms)));
    return [
      figure(`bulletin that changes ${changed} installs, until all ${callbacksOpened} calls are listed`, ms, 'ms'),
      figure('the same against a whole recheck', Math.round((ms / wholeMs) * 100), '%', { atMost: 5 }),
      figure('first call on the list after publishing', Math.round(median(firsts)), 'ms'),
    ];
  }

  async everything(): Promise<RecheckRow> {
    const { recheckId } = await value(orderRecheck(this.ports, manager, EVERYTHING));
    return finished(this.shop.store, recheckId);
  }

  /**
   * Rules that reach about k installs, so many positions of each unit: a share of the build dates of as few lines as will
   * do. So k installs are of equally many units however large the shop is.
   */
  private rules(k: number, positions: number, more: Partial<FitRuleFile>): readonly FitRuleFile[] {
    const perLine = (this.shop.rows / LINES / POSITIONS) * positions;
    const lines = Math.min(LINES, Math.max(1, Math.ceil(k / perLine)));
    const share = Math.min(1, k / (lines * perLine));
    const built = share >= 1 ? { from: null, to: null } : { from: builtAt(0), to: builtAt(share) };
    const about = { positions: Array.from({ length: positions }, (_, at) => positionCode(at)), built };
    return Array.from({ length: lines }, (_, line) =>
      rule(`FR-B${++this.number}`, { line: lineCode(line), ...about, ...more }),
    );
  }

  /** One position, as of most bulletins, unless the shop has not as many units. */
  private fewestPositions(k: number): number {
    return Math.min(POSITIONS, Math.max(1, Math.ceil((k * POSITIONS) / this.shop.rows)));
  }

  private async publish(opens: readonly FitRuleFile[]): Promise<{ readonly id: number; readonly row: RecheckRow }> {
    const { id } = await value(saveBulletin(this.ports, manager, bulletin(`SB-${++this.number}`, opens)));
    const { recheckId } = await value(publishBulletin(this.ports, manager, { id, version: 1 }));
    return { id, row: await finished(this.shop.store, recheckId) };
  }

  private async withdraw(id: number): Promise<RecheckRow> {
    const { recheckId } = await value(withdrawBulletin(this.ports, manager, { id, version: 2, reason: 'Misprint' }));
    return finished(this.shop.store, recheckId);
  }

  private async timed(work: () => Promise<RecheckRow>): Promise<Measured[]> {
    const seen: Measured[] = [];
    for (let round = 0; round < this.rounds; round++) {
      const bareMs = await this.bareMs();
      seen.push({ ...took(await work()), bareMs });
    }
    return seen;
  }

  private async bareMs(): Promise<number> {
    return (await bareCopy(this.shop.pool, this.shop.url)).ms;
  }

  private async calls(): Promise<number> {
    const { rows } = await this.shop.pool.query<{ n: number }>(
      `SELECT count(*)::int AS n FROM callback WHERE state = 'open'`,
    );
    return rows[0]!.n;
  }
}

const took = (row: RecheckRow): { row: RecheckRow; ms: number } => ({ row, ms: row.finishedAt! - row.createdAt });
const planMs = ({ row }: Measured): number => row.startedAt! - row.createdAt;

export const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;
export const round2 = (value: number): number => Math.round(value * 100) / 100;
