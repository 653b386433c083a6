import { columnLooks, kindOf, readRow, type FileReading } from '../../sheets';
import type { SheetChoice, SheetRecord, Tables } from '../ports/index';

/** Reads every row by the chosen columns and keeps what it says, or why it is rejected. Nothing of the shop is asked. */
export async function readSheetRows(
  tables: Tables,
  sheet: SheetRecord,
  choice: SheetChoice,
  onRows: (rows: number) => Promise<void>,
): Promise<void> {
  const kind = kindOf(sheet.kind);
  const how: FileReading = { mapping: choice.mapping, dayOrder: choice.dayOrder, looks: columnLooks(sheet.looks) };
  let done = 0;
  for await (const rows of tables.sheets.rows(sheet.id)) {
    const read = rows.map(({ n, cells }) => {
      const { ok: _ok, ...reading } = readRow(kind, cells, how);
      return { n, ...reading };
    });
    await tables.sheets.keepReadings(sheet.id, read);
    done += rows.length;
    await onRows(done);
  }
}
