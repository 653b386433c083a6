import { textOfCell, type Cell } from './cell';
import type { ColumnLook } from './damage';
import type { DayOrder } from './readers';

/** What has been seen of a file's columns so far. Grows with each row; made once for a file. */
export class ColumnsSeen {
  private readonly zeroLed: Map<number, number>[] = [];
  private first = 0;
  private second = 0;

  add(cells: readonly Cell[]): void {
    for (const [at, cell] of cells.entries()) {
      const text = textOfCell(cell).trim();
      if (/^0\d+$/.test(text)) {
        const seen = (this.zeroLed[at] ??= new Map());
        seen.set(text.length, (seen.get(text.length) ?? 0) + 1);
        continue;
      }
      const day = /^(\d{1,2})[-./](\d{1,2})[-./]\d{4}$/.exec(text);
      if (!day) continue;
      if (Number(day[1]) > 12) this.first++;
      if (Number(day[2]) > 12) this.second++;
    }
  }

  /** For the store: lengths and counts by column. */
  looks(columns: number): readonly (readonly (readonly [number, number])[])[] {
    return Array.from({ length: columns }, (_, at) => [...(this.zeroLed[at] ?? [])]);
  }

  /** The order in which the file writes days, where one of them can be told and no other speaks against it. */
  dayOrder(): DayOrder | null {
    if (this.first > 0 && this.second === 0) return 'day-month-year';
    return this.second > 0 && this.first === 0 ? 'month-day-year' : null;
  }
}

/** The looks as they come out of the store. */
export function columnLooks(kept: readonly (readonly (readonly [number, number])[])[]): readonly ColumnLook[] {
  return kept.map((lengths) => ({ zeroLed: new Map(lengths) }));
}
