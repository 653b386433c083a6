import type { LabelSheetName } from '../contracts';
import type { LabelLayout } from './paper';

const INCH = 25.4;

/** Measures of sheets that any stationer sells; common practice, no source. A trial print on plain paper shows the fit. */
export const LABEL_LAYOUTS: Record<LabelSheetName, LabelLayout> = {
  'a4-3x8': { size: 'A4', across: 3, down: 8, width: 70, height: 37, left: 0, top: 0.5, stepX: 70, stepY: 37 },
  'a4-3x7': {
    size: 'A4',
    across: 3,
    down: 7,
    width: 63.5,
    height: 38.1,
    left: 7.25,
    top: 15.15,
    stepX: 66,
    stepY: 38.1,
  },
  'a4-2x7': {
    size: 'A4',
    across: 2,
    down: 7,
    width: 99.1,
    height: 38.1,
    left: 4.65,
    top: 15.15,
    stepX: 101.6,
    stepY: 38.1,
  },
  'letter-3x10': {
    ...{ size: 'Letter', across: 3, down: 10, width: 2.625 * INCH, height: INCH, left: 0.1875 * INCH, top: 0.5 * INCH },
    ...{ stepX: 2.75 * INCH, stepY: INCH },
  },
  'letter-2x5': {
    ...{ size: 'Letter', across: 2, down: 5, width: 4 * INCH, height: 2 * INCH, left: 0.15625 * INCH, top: 0.5 * INCH },
    ...{ stepX: 4.1875 * INCH, stepY: 2 * INCH },
  },
};

/** A label sheet in words: `A4, 3 across and 8 down, 70 x 37 mm`. */
export function sayLabelSheet(name: LabelSheetName): string {
  const { size, across, down, width, height } = LABEL_LAYOUTS[name];
  return `${size}, ${across} across and ${down} down, ${round(width)} x ${round(height)} mm`;
}

/** Where the label with this number (from 0) lies: which sheet, and its upper left corner in millimetres. */
export function placeOfLabel(layout: LabelLayout, n: number): { sheet: number; x: number; y: number } {
  const { across, down, left, top, stepX, stepY } = layout;
  const onSheet = n % (across * down);
  const [row, column] = [Math.floor(onSheet / across), onSheet % across];
  return { sheet: Math.floor(n / (across * down)), x: left + column * stepX, y: top + row * stepY };
}

const round = (mm: number): number => Math.round(mm * 10) / 10;
