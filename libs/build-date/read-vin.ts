import { intersectionOf, daySet, type DaySet, type DaySpan } from '../day';
import type { EvidenceOf } from './evidence';
import { firstModelYearOf, modelYearWindow, YEARS_IN_CYCLE } from './model-year';
import { says, saysNothing, type Reading } from './reading';
import { LETTER_IN_POSITION_7_SINCE, VIN_FORM, vinCheckDigit } from './vin-rules';

type Vin = EvidenceOf<'vin'>;

/** Build days by a vehicle number: its model years, and for a light vehicle only those position 7 leaves. */
export function readVin(evidence: Vin, bounds: DaySpan): Reading {
  const vin = evidence.vin.toUpperCase().replace(/[\s-]/g, '');
  const first = VIN_FORM.test(vin) ? firstModelYearOf(vin[9]!) : null;
  if (first === null) return saysNothing('not-a-vin', () => sayForm(vin));
  const expected = vinCheckDigit(vin);
  if (evidence.checkDigit === 'required' && expected !== vin[8])
    return saysNothing('vin-check-digit', () => sayCheckDigit(vin, expected));
  const years = [first, first + YEARS_IN_CYCLE].filter((year) => modelYearWindow(year).from < bounds.to);
  const days = daysOfVin(evidence, vin, years);
  return says(days, () => sayYears(vin, evidence, days, years));
}

function daysOfVin({ vehicle }: Vin, vin: string, years: number[]): DaySet {
  if (vehicle === 'other') return daySet(years.map(modelYearWindow));
  const letter = vin[6]! > '9';
  if (!letter) return years.filter((year) => year < 2010).map(modelYearWindow);
  const late = years.filter((year) => year >= 2010).map(modelYearWindow);
  const changeover = years
    .filter((year) => year === 2009)
    .map((year) => ({ from: LETTER_IN_POSITION_7_SINCE, to: modelYearWindow(year).to }));
  return daySet([...changeover, ...late]);
}

function sayYears(vin: string, { vehicle }: Vin, days: DaySet, years: number[]): string {
  const kept = years.filter((year) => intersectionOf(days, [modelYearWindow(year)]).length > 0);
  const why =
    vehicle === 'light'
      ? `position 7 is ${vin[6]}, which tells the 30-year cycle of a light vehicle`
      : 'position 7 tells the 30-year cycle of light vehicles only';
  return (
    `Vehicle number ${vin}: year character ${vin[9]} means model year ${kept.join(' or ') || 'not begun yet'} (${why}); ` +
    'a model year is built from 2 January of the year before to 31 December of its own.'
  );
}

function sayForm(vin: string): string {
  if (vin.length !== 17) return `Vehicle number ${vin} has ${vin.length} characters; it must have 17.`;
  return VIN_FORM.test(vin)
    ? `Vehicle number ${vin} has ${vin[9]} in position 10; a model-year character is never U, Z or 0.`
    : `Vehicle number ${vin} holds a character that is never used; letters are A to Z without I, O and Q, and digits.`;
}

function sayCheckDigit(vin: string, expected: string): string {
  return (
    `Vehicle number ${vin} has check digit ${vin[8]}, but its other characters give ${expected}; ` +
    'read the plate again, one character is not what it seems.'
  );
}
