import { SheetRefused } from './refusal';
import { broken, type Archive } from './unpack';
import { hearXml } from './xml-events';

/** What the sheet's own XML does not say of its cells. */
export interface WorkbookParts {
  /** Name of the entry that holds the first sheet. */
  readonly sheet: string;
  /** Texts that cells name by number. */
  readonly texts: readonly string[];
  /** By number of a cell's style: is its number a day? */
  readonly isDay: readonly boolean[];
  /** Days are counted from 1904 and not from 1900. */
  readonly from1904: boolean;
}

/** Texts of a workbook stand in memory, since any cell may name any of them. */
const MOST_TEXT = 128 * 1024 * 1024;

/** More styles than any spreadsheet keeps (it stops at 65,490), and more parts than an archive may hold. */
const MOST_LISTED = 65_536;

const tooMuchText = () =>
  new SheetRefused('The workbook holds more than 128 MB of text; save its sheet as CSV, or split it.', true);

const tooManyOf = (what: string) =>
  new SheetRefused(`The workbook has more than ${MOST_LISTED} ${what}; save its sheet as CSV.`, true);

/** Reads all of a workbook but its sheet. */
export async function readParts(archive: Archive): Promise<WorkbookParts> {
  let [id, from1904] = ['', false];
  await hearXml(archive.text('xl/workbook.xml'), {
    open(name, attributes) {
      if (name === 'workbookPr') from1904 = ['1', 'true'].includes(attributes['date1904'] ?? '');
      if (name === 'sheet' && id === '') id = attributes['r:id'] ?? attributes['id'] ?? '';
    },
  });
  const places = await relations(archive);
  const sheet = places.find((one) => one.id === id)?.target;
  if (sheet === undefined || !archive.has(sheet)) throw broken();
  const placeOf = (kind: string, usual: string) =>
    places.find(({ type }) => type.endsWith(`/${kind}`))?.target ?? usual;
  return {
    sheet,
    from1904,
    texts: await sharedTexts(archive, placeOf('sharedStrings', 'xl/sharedStrings.xml')),
    isDay: await dayStyles(archive, placeOf('styles', 'xl/styles.xml')),
  };
}

async function relations(archive: Archive) {
  const all: { id: string; type: string; target: string }[] = [];
  await hearXml(archive.text('xl/_rels/workbook.xml.rels'), {
    open(name, { Id, Type, Target }) {
      if (name !== 'Relationship') return;
      if (all.length >= MOST_LISTED) throw tooManyOf('parts');
      const target = Target ?? '';
      all.push({ id: Id ?? '', type: Type ?? '', target: target.startsWith('/') ? target.slice(1) : `xl/${target}` });
    },
  });
  return all;
}

async function sharedTexts(archive: Archive, name: string): Promise<string[]> {
  const texts: string[] = [];
  let [text, inText, inPhonetic, length] = ['', false, false, 0];
  await hearXml(archive.text(name), {
    open(tag) {
      if (tag === 'si') text = '';
      if (tag === 'rPh') inPhonetic = true;
      inText = tag === 't' && !inPhonetic;
    },
    text(piece) {
      if (inText) text += piece;
      if (length + text.length > MOST_TEXT) throw tooMuchText();
    },
    close(tag) {
      if (tag === 't') inText = false;
      if (tag === 'rPh') inPhonetic = false;
      if (tag !== 'si') return;
      // An empty text takes room too.
      length += text.length + 16;
      if (length > MOST_TEXT) throw tooMuchText();
      texts.push(unescaped(text));
    },
  });
  return texts;
}

/** Characters that XML cannot hold stand as `_x000D_` in a workbook, and that itself as `_x005F_x000D_`. */
export function unescaped(text: string): string {
  return text.includes('_x')
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)))
    : text;
}

/** Numbers of the built-in formats that show a day: ECMA-376 part 1, 18.8.30 (14 to 17 and 22; 27 to 36 and 50 to 58 in East Asia). */
const isBuiltInDay = (id: number): boolean =>
  (id >= 14 && id <= 17) || id === 22 || (id >= 27 && id <= 36) || (id >= 50 && id <= 58);

async function dayStyles(archive: Archive, name: string): Promise<boolean[]> {
  const own = new Map<number, boolean>();
  const styles: boolean[] = [];
  let inCells = false;
  await hearXml(archive.text(name), {
    open(tag, { numFmtId, formatCode }) {
      const id = Number(numFmtId);
      if (own.size > MOST_LISTED || styles.length > MOST_LISTED) throw tooManyOf('styles');
      if (tag === 'numFmt') own.set(id, showsDay(formatCode ?? ''));
      if (tag === 'cellXfs') inCells = true;
      if (tag === 'xf' && inCells) styles.push(own.get(id) ?? isBuiltInDay(id));
    },
    close(tag) {
      if (tag === 'cellXfs') inCells = false;
    },
  });
  return styles;
}

/** True for a format that shows a year or a day of the month; what stands in quotes, brackets or after a stroke is no part of it. */
export function showsDay(format: string): boolean {
  const bare = format.replace(/"[^"]*"|\\.|\[[^\]]*\]|[_*]./g, '').split(';')[0]!;
  return /[yd]/i.test(bare) || /^m+$/i.test(bare.trim());
}
