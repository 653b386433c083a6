// Reads a PDF from standard input and writes what is in it as JSON: a process of its own, since the reader is a module
// of the kind that the test runner does not load.
import { buffer } from 'node:stream/consumers';
import { getDocument, OPS, Util } from 'pdfjs-dist/legacy/build/pdf.mjs';

const MM = 72 / 25.4;

/** Where each picture of a page lies: it is painted into a square of one by one, which the drawing steps have moved. */
async function readImages(page) {
  const { fnArray, argsArray } = await page.getOperatorList();
  const images = [];
  const kept = [];
  let now = [1, 0, 0, 1, 0, 0];
  fnArray.forEach((step, at) => {
    if (step === OPS.save) kept.push(now);
    else if (step === OPS.restore) now = kept.pop() ?? now;
    else if (step === OPS.transform) now = Util.transform(now, argsArray[at]);
    else if (step === OPS.paintImageXObject || step === OPS.paintInlineImageXObject) images.push(now);
  });
  return images;
}

async function readPage(page) {
  const [left, bottom, right, top] = page.view;
  const { items } = await page.getTextContent();
  const text = items.map(({ str, hasEOL }) => str + (hasEOL ? ' ' : '')).join('');
  const images = await readImages(page);
  return {
    images: images.map(([width, , , height, x, y]) => ({
      width: Math.abs(width) / MM,
      height: Math.abs(height) / MM,
      x: (x - left) / MM,
      y: (top - Math.max(y, y + height)) / MM,
    })),
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
