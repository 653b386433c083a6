import sharp from 'sharp';
import { MOST_PHOTO_PIXELS } from '../contracts';
import type { Pictures } from '../usecases';
import { holdsAnotherFile } from './holds-another-file';
import { kindOf } from './kind-of';

/** Longest side in points: enough to read a stamped number, small enough for a shop's wireless. */
const FULL = 1_600;
const THUMB = 320;
/** The same on paper: eight centimetres at the 300 points per inch that print finely. */
const PRINT = 945;

// A shop's machine has other work: pictures are made one at a time on one processor, and none is kept in memory.
sharp.concurrency(1);
sharp.cache(false);

/**
 * Makes a picture anew from its points: turned the right way up, scaled, as JPEG. Nothing but points comes through, so
 * where and by what it was taken is gone, and so is whatever else was in the file.
 */
export const pictures: Pictures = {
  async remake(sent) {
    const kind = kindOf(sent);
    if (kind === null) return { ok: false, problem: 'no-picture' };
    if (holdsAnotherFile(sent)) return { ok: false, problem: 'two-files-in-one' };
    try {
      const { width, height, format } = await sharp(sent, { limitInputPixels: false }).metadata();
      if (format !== kind) return { ok: false, problem: 'no-picture' };
      if (width * height > MOST_PHOTO_PIXELS) return { ok: false, problem: 'too-many-points' };
      return { ok: true, picture: await made(sent) };
    } catch {
      return { ok: false, problem: 'broken' };
    }
  },
  async forPrint(kept) {
    const { data, info } = await sharp(kept)
      .resize({ width: PRINT, height: PRINT, fit: 'inside', withoutEnlargement: true })
      .jpeg({ quality: 82 })
      .toBuffer({ resolveWithObject: true });
    return { jpeg: data, width: info.width, height: info.height };
  },
};

async function made(sent: Uint8Array) {
  const { data: full, info } = await sharp(sent, { limitInputPixels: MOST_PHOTO_PIXELS, failOn: 'truncated' })
    .autoOrient()
    .resize({ width: FULL, height: FULL, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb')
    .jpeg({ quality: 82 })
    .toBuffer({ resolveWithObject: true });
  const thumb = await sharp(full)
    .resize({ width: THUMB, height: THUMB, fit: 'inside', withoutEnlargement: true })
    .jpeg({ quality: 78 })
    .toBuffer();
  return { full, thumb, width: info.width, height: info.height };
}
