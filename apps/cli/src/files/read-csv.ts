import { csvRecords, type CsvRecord } from '../../../../libs/sheet-files';
import { Refusal } from '../refusal';

export { delimiterOf } from '../../../../libs/sheet-files';

/** One row as it stands in the file, with the line it begins on. */
export type CsvRow = CsvRecord;

/**
 * Reads CSV text piece by piece and hands out whole rows, so that a file of any size needs little memory. Blank lines
 * are passed over. Quotes that do not close are refused with their line.
 */
export async function* csvRows(
  pieces: AsyncIterable<string>,
  name: string,
  delimiter: (start: string) => string,
): AsyncGenerator<readonly CsvRow[]> {
  const refuse = (line: number, says: string) => new Refusal(`${name}:${line}: ${says}`);
  for await (const batch of csvRecords(pieces, { delimiter, refuse })) {
    const rows = batch.filter(({ cells }) => cells.length > 1 || cells[0]!.trim() !== '');
    if (rows.length > 0) yield rows;
  }
}
