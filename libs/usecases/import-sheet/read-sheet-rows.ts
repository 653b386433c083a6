import { columnLooks, kindOf, readRow, type FileReading } from '../../sheets';
import type { SheetChoice, SheetRecord, Tables } from '../ports/index';

const AT_ONCE = 2_000;

/** Reads every row by the chosen columns and keeps what it says, or why it is rejected. Nothing of the shop is asked. */
export async function readSheetRows(
  tables: Tables,
  sheet: SheetRecord,
  choice: SheetChoice,
  onRows: (rows: number) => Promise<void>,
): Promise<void> {
  const kind = kindOf(sheet.kind);
  const how: FileReading = { mapping: choice.mapping, dayOrder: choice.dayOrder, looks: columnLooks(sheet.looks) };
  let [after, done] = [0, 0];
  for (;;) {
    const rows = await tables.sheets.rowsAfter(sheet.id, after, AT_ONCE);
    if (rows.length === 0) return;
    const read = rows.map(({ n, cells }) => {
      const { ok: _ok, ...reading } = readRow(kind, cells, how);
      return { n, ...reading };
    });
    await tables.sheets.keepReadings(sheet.id, read);
    after = rows[rows.length - 1]!.n;
    done += rows.length;
    await onRows(done);
  }
}
