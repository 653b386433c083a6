import type { Cell } from '../sheets';
import { SheetRefused } from './refusal';
import { columnAfter, sheetMarks } from './sheet-marks';
import { Archive } from './unpack';
import { readParts, unescaped, type WorkbookParts } from './workbook-parts';
import { xmlEvents } from './xml-events';

/** No spreadsheet makes a cell of more than 32,767 characters; one that goes on in pieces must end too. */
const LONGEST_CELL = 1_000_000;

/**
 * The rows of a workbook's first sheet, piece by piece: every row has its place, those that are left out in the file
 * are handed out blank. Refused when it is broken or too large unpacked. Only its texts are kept in memory; the sheet
 * is walked twice, since which cells are merged stands behind them.
 */
export async function* readWorkbook(path: string): AsyncGenerator<readonly (readonly Cell[])[]> {
  const archive = await Archive.open(path);
  try {
    const parts = await readParts(archive);
    const { merged } = await sheetMarks(archive.text(parts.sheet));
    let rows: (readonly Cell[])[] = [];
    const sheet = new SheetHearer(parts, merged, (row) => rows.push(row));
    for await (const _ of xmlEvents(archive.text(parts.sheet), sheet)) {
      if (rows.length === 0) continue;
      yield rows;
      rows = [];
    }
  } finally {
    archive.close();
  }
}

/** Puts cells together from what is heard of a sheet. */
class SheetHearer {
  private rowNumber = 0;
  private column = 0;
  private cells: Cell[] = [];
  private type = '';
  private style = 0;
  private value: string | null = null;
  private inline = '';
  private formula: string | null = null;
  private hearing: 'v' | 'f' | 't' | null = null;
  private inPhonetic = false;
  /** The last column in which a place lies under a merged cell. */
  private widest = 0;

  constructor(
    private readonly parts: WorkbookParts,
    private readonly merged: ReadonlyMap<string, string>,
    private readonly take: (row: readonly Cell[]) => void,
  ) {
    for (const place of merged.keys()) this.widest = Math.max(this.widest, Number(place.split(' ')[1]));
  }

  open(name: string, attributes: Readonly<Record<string, string>>): void {
    switch (name) {
      case 'row':
        return this.openRow(Number(attributes['r'] ?? this.rowNumber + 1));
      case 'c':
        return this.openCell(attributes);
      case 'v':
      case 'f':
      case 't':
        this.hearing = this.inPhonetic ? null : name;
        if (name === 'v') this.value = '';
        if (name === 'f') this.formula = '';
        return;
      case 'rPh':
        this.inPhonetic = true;
    }
  }

  text(text: string): void {
    if (this.hearing === 'v') this.value += text;
    else if (this.hearing === 'f') this.formula += text;
    else if (this.hearing === 't') this.inline += text;
    if ((this.value?.length ?? 0) + this.inline.length + (this.formula?.length ?? 0) > LONGEST_CELL)
      throw new SheetRefused(`A cell of row ${this.rowNumber} holds more than ${LONGEST_CELL} characters.`, true);
  }

  close(name: string): void {
    if (name === 'v' || name === 'f' || name === 't') this.hearing = null;
    else if (name === 'rPh') this.inPhonetic = false;
    else if (name === 'c') this.closeCell();
    else if (name === 'row') this.closeRow();
  }

  private openRow(number: number): void {
    while (this.rowNumber + 1 < number) {
      this.rowNumber++;
      this.take([]);
    }
    this.rowNumber = number;
    this.column = 0;
    this.cells = [];
  }

  private openCell({ r, t, s }: Readonly<Record<string, string>>): void {
    this.column = columnAfter(this.column, r);
    this.type = t ?? 'n';
    this.style = Number(s ?? 0);
    [this.value, this.inline, this.formula] = [null, '', null];
  }

  private closeCell(): void {
    while (this.cells.length < this.column - 1) this.cells.push(this.under(this.cells.length + 1));
    this.cells[this.column - 1] =
      this.formula !== null ? { formula: `=${this.formula.slice(0, 100)}` } : (this.under(this.column) ?? this.plain());
  }

  /** Places under merged cells behind the last one of the row are often not written at all. */
  private closeRow(): void {
    if (this.cells.length > 0)
      for (let column = this.cells.length + 1; column <= this.widest; column++) {
        const under = this.under(column);
        if (under === null) continue;
        while (this.cells.length < column - 1) this.cells.push(null);
        this.cells.push(under);
      }
    this.take(this.cells);
  }

  /** The place under a merged cell; null for every other. */
  private under(column: number): Cell {
    const range = this.merged.size === 0 ? undefined : this.merged.get(`${this.rowNumber} ${column}`);
    return range === undefined ? null : { merged: range };
  }

  private plain(): Cell {
    const { type, value, parts } = this;
    if (type === 'inlineStr') return unescaped(this.inline);
    if (value === null || value === '') return null;
    if (type === 's') return parts.texts[Number(value)] ?? { fault: 'a text that is not in the workbook' };
    if (type === 'str') return unescaped(value);
    if (type === 'b') return value === '1' || value === 'true';
    if (type === 'e') return { fault: value };
    if (type === 'd') return dayOrTime(new Date(/Z$/.test(value) ? value : `${value}Z`), value);
    const number = Number(value);
    if (!Number.isFinite(number)) return { fault: value };
    return parts.isDay[this.style] ? dayOf(number, parts.from1904) : number;
  }
}

const DAY_MS = 86_400_000;

/**
 * The day that a workbook means by a number. From 1900 it counts a 29 February of that year which never was, so before
 * March 1900 the number is one less than it should be (ECMA-376 part 1, 18.17.4.1); from 1904 day 0 is 1 January.
 */
function dayOf(number: number, from1904: boolean): Cell {
  const days = from1904 ? number - 24_107 : number < 60 ? number - 25_568 : number - 25_569;
  return dayOrTime(new Date(Math.round(days * DAY_MS)), String(number));
}

function dayOrTime(instant: Date, text: string): Cell {
  if (Number.isNaN(instant.getTime())) return text;
  const iso = instant.toISOString();
  return iso.endsWith('T00:00:00.000Z') ? { date: iso.slice(0, 10) } : iso.slice(0, 19).replace('T', ' ');
}
