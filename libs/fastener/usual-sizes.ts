import { mmFromInches } from './units';

/** A size shear pins and bolts are commonly made in. */
export interface UsualSize {
  words: string;
  diameterMm: number;
}

/** Common practice in the trade; no published source. */
export const USUAL_PIN_SIZES: readonly UsualSize[] = [
  { words: '3/16 in', diameterMm: mmFromInches(3 / 16) },
  { words: '5 mm', diameterMm: 5 },
  { words: '6 mm', diameterMm: 6 },
  { words: '1/4 in', diameterMm: mmFromInches(1 / 4) },
  { words: '5/16 in', diameterMm: mmFromInches(5 / 16) },
  { words: '8 mm', diameterMm: 8 },
  { words: '3/8 in', diameterMm: mmFromInches(3 / 8) },
  { words: '10 mm', diameterMm: 10 },
];

/**
 * The usual sizes a measured diameter can be, nearest first: shanks are made a little under their nominal size, so
 * `withinMm` (inclusive) counts either way. 5/16 in and 8 mm are 0.06 mm apart, and both come back.
 */
export function usualSizesNear(measuredMm: number, withinMm = 0.35): UsualSize[] {
  const off = (size: UsualSize): number => Math.abs(size.diameterMm - measuredMm);
  return USUAL_PIN_SIZES.filter((size) => off(size) <= withinMm).sort((one, other) => off(one) - off(other));
}
