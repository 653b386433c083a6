import { Injectable } from '@nestjs/common';
import { ProblemError } from '../http/problem-error';

const A_MINUTE = 60_000;
const MOST = 100;

/** So many exports a minute for each person: enough for any work, too few to drain the shop unseen. Kept in memory. */
@Injectable()
export class ExportBrake {
  private readonly taken = new Map<number, { count: number; since: number }>();

  /** Counts an export; thrown with 429 and how long to wait when there were too many. */
  count(personId: number, now = Date.now()): void {
    const known = this.taken.get(personId);
    const fresh = !known || now - known.since >= A_MINUTE;
    const { count, since } = fresh ? { count: 0, since: now } : known;
    if (count >= MOST) {
      const seconds = Math.ceil((since + A_MINUTE - now) / 1_000);
      throw new ProblemError(
        429,
        'too-many',
        `At most ${MOST} exports a minute; wait ${seconds} seconds.`,
        {},
        { 'retry-after': String(seconds) },
      );
    }
    this.taken.set(personId, { count: count + 1, since });
  }
}
