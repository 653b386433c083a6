// Reads a PDF from standard input and writes what is in it as JSON: a process of its own, since the reader is a module
// of the kind that the test runner does not load.
import { buffer } from 'node:stream/consumers';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

const MM = 72 / 25.4;

async function readPage(page) {
  const [left, bottom, right, top] = page.view;
  const { items } = await page.getTextContent();
  const text = items.map(({ str, hasEOL }) => str + (hasEOL ? ' ' : '')).join('');
  return {
    width: (right - left) / MM,
    height: (top - bottom) / MM,
    text: text.replace(/\s+/g, ' '),
    items: items.map(({ str, transform }) => ({
      text: str,
      x: (transform[4] - left) / MM,
      y: (top - transform[5]) / MM,
    })),
  };
}

const data = new Uint8Array(await buffer(process.stdin));
const task = getDocument({ data, verbosity: 0 });
const document = await task.promise;
const pages = [];
for (let n = 1; n <= document.numPages; n++) pages.push(await readPage(await document.getPage(n)));
const { info } = await document.getMetadata();
process.stdout.write(JSON.stringify({ title: info.Title ?? '', pages }));
await task.destroy();
