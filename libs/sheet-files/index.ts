export * from './refusal';
export { csvRecords, countLines, delimiterOf, type CsvRecord } from './csv-rows';
export { ENCODINGS, type Encoding } from './encoding';
export { openSheet, type OpenSheet, type SheetRow } from './open-sheet';
export { writeWorkbook } from './write-workbook';
