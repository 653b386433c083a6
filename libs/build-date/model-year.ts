import { dayOf, type DaySpan } from '../day';

/**
 * Model-year characters in order from 1980; I, O, Q, U, Z and 0 are never used. The 30 characters repeat every
 * 30 years. Source: 49 CFR 565.15 Table VII; the engine family list of the EPA ("Information about Family Naming
 * Conventions") uses the same letters.
 */
const CHARACTERS = 'ABCDEFGHJKLMNPRSTVWXY123456789';
const FIRST_YEAR = 1980;
export const YEARS_IN_CYCLE = CHARACTERS.length;

/** The model year a character means in the cycle 1980 to 2009, or null for a character that means none. */
export function firstModelYearOf(character: string): number | null {
  const place = character.length === 1 ? CHARACTERS.indexOf(character) : -1;
  return place < 0 ? null : FIRST_YEAR + place;
}

/** The character of a model year (1980 or later). */
export function modelYearCharacter(year: number): string {
  return CHARACTERS[(year - FIRST_YEAR) % YEARS_IN_CYCLE]!;
}

/**
 * The days in which something of a model year can have been built: 2 January of the year before to 31 December of
 * the year. A model year holds one 1 January only, that of its own year. Source: 40 CFR 85.2302 to 85.2304.
 */
export function modelYearWindow(year: number): DaySpan {
  return { from: dayOf(year - 1, 1, 2), to: dayOf(year + 1, 1, 1) };
}
