import type { WeighedRow } from '../ports/index';
import { canonical, problem, rejected, same } from './kind-work';
import { RowTable } from './row-table';

/** Remembers which row said something first, so that a second one that says otherwise is found. */
export class SaidBefore {
  private readonly rows = new RowTable();

  /** Null when the row is the first to speak of it; else `same`, or a problem. */
  look(n: number, key: string, values: unknown, what: string): WeighedRow | null {
    const before = this.rows.put(n, key, canonical(values));
    if (before === null) return null;
    if (before.isSame) return same(n);
    const says = `Row ${before.n} speaks of ${what} already, and says otherwise; keep one.`;
    return rejected(n, problem(null, 'twice', says));
  }
}
