import type { Content, ContentStack, TableCell } from 'pdfmake/interfaces';
import type { Block, Line, Picture, Piece } from '../papers';
import { runsOf } from './runs';

const MM = 72 / 25.4;
/** The window of an envelope, from the sheet's left edge less the margin, and its height; ISO 269 DL with the usual fold. */
const ADDRESS = { width: 85 * MM, height: 45 * MM };

/** A line as stretches of text, each in the font that holds it. */
export function inline(line: Line): Content {
  const pieces: readonly Piece[] = Array.isArray(line) ? (line as readonly Piece[]) : [line as Piece];
  return {
    text: pieces.flatMap((piece) => {
      const { text, number = false, strong = false } = typeof piece === 'string' ? { text: piece } : piece;
      return runsOf(text, number).map((run) => ({ text: run.text, font: run.font, bold: strong }));
    }),
  };
}

/** A block as the press sets it. */
export function contentOf(block: Block): Content {
  switch (block.kind) {
    case 'title':
      return titleOf(block);
    case 'heading':
      return {
        stack: [inline([{ text: block.text, strong: true }])],
        fontSize: 13,
        margin: [0, 12, 0, 4],
        headlineLevel: 1,
      };
    case 'text':
      return { stack: [inline(block.line)], margin: [0, 0, 0, 6] };
    case 'list':
      return { ul: block.items.map(inline), margin: [0, 0, 0, 6] };
    case 'table':
      return tableOf(block);
    case 'pictures':
      return { ...picturesOf(block.pictures), margin: [0, 0, 0, 8] };
    case 'caution':
      return cautionOf(block.text);
    case 'sign':
      return signOf(block.text);
    case 'address':
      return addressOf(block);
  }
}

type Of<K extends Block['kind']> = Extract<Block, { kind: K }>;

function titleOf({ left, right }: Of<'title'>): Content {
  const first = (lines: readonly Line[], size: number) =>
    lines.map((line, at) => ({ stack: [inline(line)], fontSize: at === 0 ? size : 11 }));
  return {
    stack: [
      { columns: [{ stack: first(left, 20) }, { stack: first(right, 12) }] },
      { canvas: [{ type: 'line', x1: 0, y1: 4, x2: 480, y2: 4, lineWidth: 1.5 }] },
    ],
    margin: [0, 0, 0, 10],
  };
}

function tableOf({ heads, widths, rows }: Of<'table'>): Content {
  const whole = widths.reduce((sum, one) => sum + one, 0);
  const head: TableCell[] = heads.map((text) => inline([{ text, strong: true }]) as TableCell);
  return {
    table: {
      headerRows: 1,
      dontBreakRows: true,
      widths: widths.map((one) => `${(one / whole) * 100}%`),
      body: [head, ...rows.map((row) => rowOf(row, heads.length))],
    },
    layout: 'lightHorizontalLines',
    fontSize: 10,
    margin: [0, 0, 0, 8],
  };
}

type Row = Of<'table'>['rows'][number];

function rowOf(row: Row, columns: number): TableCell[] {
  if (!('pictures' in row)) return row.map((cell) => inline(cell) as TableCell);
  const whole = { ...picturesOf(row.pictures), colSpan: columns } as TableCell;
  return [whole, ...Array.from({ length: columns - 1 }, (): TableCell => ({ text: '' }))];
}

/** The room a picture has: two beside each other on the narrower paper, and no more of the page than a third. */
const PICTURE = { width: 80 * MM, height: 70 * MM };

/** Pictures two and two beside each other, each whole, with its words under it, and never cut by the end of a page. */
function picturesOf(pictures: readonly Picture[]): { stack: Content[] } {
  const pairs = Array.from({ length: Math.ceil(pictures.length / 2) }, (_, at) => pictures.slice(at * 2, at * 2 + 2));
  return {
    stack: pairs.map((pair) => ({
      columns: pair.map(pictureOf),
      columnGap: 5 * MM,
      unbreakable: true,
      margin: [0, 2, 0, 6],
    })),
  };
}

function pictureOf({ jpeg, width, height, words }: Picture): ContentStack & { width: number } {
  const scale = Math.min(PICTURE.width / width, PICTURE.height / height);
  return {
    width: PICTURE.width,
    stack: [
      {
        image: `data:image/jpeg;base64,${Buffer.from(jpeg).toString('base64')}`,
        width: width * scale,
        height: height * scale,
      },
      { stack: [inline(words)], fontSize: 9, margin: [0, 2, 0, 0] },
    ],
  };
}

/** A frame of ink, so that it is seen on a sheet without colour. */
function cautionOf(text: string): Content {
  const body: TableCell[][] = [
    [{ stack: [inline([{ text: 'Caution. ', strong: true }, text])], margin: [6, 5, 6, 5] }],
  ];
  return { table: { widths: ['*'], body }, margin: [0, 8, 0, 8], unbreakable: true };
}

function signOf(text: string): Content {
  return {
    stack: [{ canvas: [{ type: 'line', x1: 0, y1: 0, x2: 220, y2: 0, lineWidth: 0.8 }] }, inline(text)],
    margin: [0, 44, 0, 0],
    unbreakable: true,
  };
}

function addressOf({ from, lines }: Of<'address'>): Content {
  const stack = [
    { stack: [inline(from)], fontSize: 8, margin: [0, 0, 0, 5] as [number, number, number, number] },
    ...lines.map(inline),
  ];
  return { table: { widths: [ADDRESS.width], heights: [ADDRESS.height], body: [[{ stack }]] }, layout: 'noBorders' };
}
