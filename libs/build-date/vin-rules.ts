import { day } from '../day';

/** Characters of a vehicle number, and what each counts in the check sum. Source: 49 CFR 565.15, Table III; ISO 3779. */
const VALUES: ReadonlyMap<string, number> = new Map(
  [...'0123456789']
    .map((digit) => [digit, Number(digit)] as const)
    .concat(
      [...'ABCDEFGH'].map((letter, at) => [letter, at + 1] as const),
      [...'JKLMN'].map((letter, at) => [letter, at + 1] as const),
      [['P', 7] as const, ['R', 9] as const],
      [...'STUVWXYZ'].map((letter, at) => [letter, at + 2] as const),
    ),
);

/** Weight of each of the 17 places. Source: 49 CFR 565.15, Table IV. */
const WEIGHTS = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

/** 17 characters without I, O and Q. */
export const VIN_FORM = /^[A-HJ-NPR-Z0-9]{17}$/;

/**
 * From this day on vehicles may, and from 30 April 2009 must, be numbered by the rule that makes position 7 of a
 * light vehicle a letter; so a light vehicle of model year 2009 can bear a letter there. Source: 73 FR 23367.
 */
export const LETTER_IN_POSITION_7_SINCE = day('2008-10-27');

/** The check digit, 0 to 9 or X, that position 9 of a well-formed vehicle number should be. Source: 49 CFR 565.15(c). */
export function vinCheckDigit(vin: string): string {
  let sum = 0;
  for (let at = 0; at < WEIGHTS.length; at++) sum += WEIGHTS[at]! * VALUES.get(vin[at]!)!;
  const rest = sum % 11;
  return rest === 10 ? 'X' : String(rest);
}
