/** Words that begin what a browser or an interpreter would run. */
const WORDS = ['<script', '<!doctype', '<?php', '%pdf-', '<html', '<svg'];
/** Short words are looked for only where text can stand: chance would find them in the points of a large picture. */
const LONG = 6;
const HEAD = 4_096;
const LARGEST_ZIP_COMMENT = 65_535;
const ZIP_END = Buffer.from('PK\x05\x06', 'latin1');

/**
 * True for a file that is a picture and something else besides: a page, a drawing with a program in it, a document, an
 * archive. A telephone's moving picture, which has a film behind its points, is none of these; the film is left out
 * when the picture is made anew.
 */
export function holdsAnotherFile(bytes: Uint8Array): boolean {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const text = file.toString('latin1').toLowerCase();
  const found = WORDS.some((word) => (word.length >= LONG ? text : text.slice(0, HEAD)).includes(word));
  return found || endsAsZip(file);
}

/** An archive is read from its end: the record there names the length of the comment after it. */
function endsAsZip(file: Buffer): boolean {
  const tail = file.subarray(Math.max(0, file.length - LARGEST_ZIP_COMMENT - 22));
  for (let at = tail.indexOf(ZIP_END); at >= 0; at = tail.indexOf(ZIP_END, at + 1)) {
    if (at + 22 <= tail.length && tail.readUInt16LE(at + 20) === tail.length - at - 22) return true;
  }
  return false;
}
