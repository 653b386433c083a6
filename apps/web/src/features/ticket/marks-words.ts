import type { Marks } from '../../../../../libs/contracts';
import { readLength } from '../../../../../libs/fastener';
import { sayLength } from '../../lib/say';

/** What the hand lens showed, in words: `head marks 3 lines, 8 mm (0.315 in) across, grooved, zinc`. */
export function marksWords({ headMarks, diameterMm, lengthMm, grooved, finish }: Marks): string {
  const said = [
    headMarks === null ? null : `head marks ${headMarks}`,
    diameterMm === null ? null : `${sayLength(diameterMm)} across`,
    lengthMm === null ? null : `${sayLength(lengthMm)} long`,
    grooved === null ? null : grooved ? 'grooved' : 'no groove',
    finish,
  ].filter((words): words is string => words !== null && words !== '');
  return said.length === 0 ? 'no marks either' : said.join(', ');
}

/** Reads a length with its unit as the bench writes it, `8,5 mm` too; refused with one sentence. */
export function readWritten(text: string, field: string): ReturnType<typeof readLength> {
  return readLength(text.trim().replace(/(\d),(\d)/, '$1.$2'), field);
}
