/** A workbook of one sheet, all cells text, the heading bold. */
export async function writeWorkbook(
  title: string,
  headings: readonly string[],
  rows: readonly (readonly string[])[],
): Promise<Buffer> {
  const { default: writeXlsxFile } = await import('write-excel-file/node');
  const head = headings.map((value) => ({ value, fontWeight: 'bold' as const }));
  const body = rows.map((cells) => cells.map((value) => (value === '' ? null : { value, type: String, format: '@' })));
  const columns = headings.map((heading) => ({ width: Math.max(12, Math.min(40, heading.length + 4)) }));
  return writeXlsxFile([head, ...body], { sheet: sheetName(title), columns, stickyRowsCount: 1 }).toBuffer();
}

/** What a sheet may be called. */
function sheetName(title: string): string {
  return title.replace(/[\\/?*[\]:]/g, ' ').slice(0, 31);
}
