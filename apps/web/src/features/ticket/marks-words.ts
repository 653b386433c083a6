import type { Marks } from '../../../../../libs/contracts';

/** What the hand lens showed, in words: `head marks 3 lines, 8 mm across, 45 mm long, grooved, zinc`. */
export function marksWords({ headMarks, diameterMm, lengthMm, grooved, finish }: Marks): string {
  const said = [
    headMarks === null ? null : `head marks ${headMarks}`,
    diameterMm === null ? null : `${diameterMm} mm across`,
    lengthMm === null ? null : `${lengthMm} mm long`,
    grooved === null ? null : grooved ? 'grooved' : 'no groove',
    finish,
  ].filter((words): words is string => words !== null && words !== '');
  return said.length === 0 ? 'no marks either' : said.join(', ');
}

/** Reads a length in millimetres (`8`, `8.5`, `8,5`) or in inches (`5/16 in`, `1 1/4"`, `0.25in`); null when it is neither. */
export function readLength(text: string): number | null {
  const plain = /^\s*(\d+(?:[.,]\d+)?)\s*(?:mm)?\s*$/i.exec(text);
  if (plain) return positive(Number(plain[1]!.replace(',', '.')));
  const inches = /^\s*(?:(\d+(?:[.,]\d+)?)(?:[\s-]+(?=\d))?)?(?:(\d+)\s*\/\s*(\d+))?\s*(?:in|inch|")\s*$/i.exec(text);
  if (!inches || (inches[1] === undefined && inches[2] === undefined)) return null;
  const whole = Number((inches[1] ?? '0').replace(',', '.'));
  const fraction = inches[2] === undefined ? 0 : Number(inches[2]) / Number(inches[3]);
  return positive(Math.round((whole + fraction) * 25.4 * 1000) / 1000);
}

function positive(value: number): number | null {
  return Number.isFinite(value) && value > 0 ? value : null;
}
