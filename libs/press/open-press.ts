import pdfmake from 'pdfmake';
import type { Content, TDocumentDefinitions } from 'pdfmake/interfaces';
import { placeOfLabel, type LabelLayout, type Labels, type Paper } from '../papers';
import type { Press } from '../usecases';
import { contentOf, inline } from './content';
import { FONT_FILES, FONTS } from './fonts';

const MM = 72 / 25.4;

/** A press that sets sheets as PDF, from its own fonts alone: it asks no network and reads no other file. */
export function openPress(): Press {
  pdfmake.setFonts(FONTS);
  pdfmake.setUrlAccessPolicy(() => false);
  pdfmake.setLocalAccessPolicy((path) => FONT_FILES.has(path));
  return {
    print: (paper) => made(sheets(paper)),
    printLabels: (labels) => made(labelSheets(labels)),
  };
}

async function made(definition: TDocumentDefinitions): Promise<Uint8Array> {
  return pdfmake.createPdf(definition).getBuffer();
}

function sheets({ title, size, foot, pages }: Paper): TDocumentDefinitions {
  return {
    info: { title },
    pageSize: size === 'A4' ? 'A4' : 'LETTER',
    // The upper margin puts an address block where the window of an envelope is.
    pageMargins: [20 * MM, 20 * MM, 20 * MM, 18 * MM],
    defaultStyle: { font: 'Words', fontSize: 11, lineHeight: 1.2 },
    content: pages.map((blocks, at) => ({
      stack: blocks.map(contentOf),
      ...(at === 0 ? {} : { pageBreak: 'before' as const }),
    })),
    // A heading goes to the next page with what it heads.
    pageBreakBefore: ({ headlineLevel }, about) =>
      headlineLevel === 1 && about.getFollowingNodesOnPage().every((node) => node.pageNumbers.length === 0),
    footer: (page, count) => ({
      columns: [
        inline(foot),
        { ...(inline(`${page} of ${count}`) as object), alignment: 'right', width: 60 } as Content,
      ],
      margin: [20 * MM, 0, 20 * MM, 0],
      fontSize: 9,
    }),
  };
}

function labelSheets({ title, layout, labels }: Labels): TDocumentDefinitions {
  return {
    info: { title },
    pageSize: layout.size === 'A4' ? 'A4' : 'LETTER',
    pageMargins: [0, 0, 0, 0],
    defaultStyle: { font: 'Words', fontSize: layout.height < 30 ? 9 : 11, lineHeight: 1.1 },
    content: labels.map((lines, n) => labelOf(lines, layout, n)),
  };
}

const INSIDE = 5 * MM;

/** The first label of a new sheet breaks the page; every label lies where its place is. */
function labelOf(lines: readonly string[], layout: LabelLayout, n: number): Content {
  const { x, y } = placeOfLabel(layout, n);
  const newSheet = n > 0 && n % (layout.across * layout.down) === 0;
  const table = {
    table: { widths: [layout.width * MM - 2 * INSIDE - 8], body: [[{ stack: lines.map(inline) }]] },
    layout: 'noBorders',
    absolutePosition: { x: x * MM + INSIDE, y: y * MM + INSIDE },
  };
  return newSheet ? { stack: [{ text: '', pageBreak: 'before' }, table] } : table;
}
