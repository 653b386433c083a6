import { saySpan, type DaySpan } from '../day';
import type { EvidenceOf } from './evidence';
import { firstModelYearOf, modelYearWindow, YEARS_IN_CYCLE } from './model-year';
import { notBefore, says, saysNothing, type Reading } from './reading';

/** Model year, maker (3), sector, displacement or type (4, may hold a point), free characters (3). */
const FORM = /^[A-Z0-9]{5}[A-Z0-9.]{4}[A-Z0-9]{3}$/;

/** The family code was made for model years from 1994 on (scheme of 1991). */
const FIRST_MODEL_YEAR = 1994;
/** 40 CFR part 90 began with model year 1997 (from memory; the text was not at hand). */
const FIRST_SMALL_SPARK_IGNITION_YEAR = 1997;

/**
 * A floor for the machine, by the model-year character of the engine's emission family code (12 characters, EPA
 * "Information about Family Naming Conventions"). No ceiling: makers of machines may use up earlier engines
 * (40 CFR 1068.105(a)). Where the character fits two model years the earlier one sets the floor.
 */
export function readEngineFamily(evidence: EvidenceOf<'engine-family'>, bounds: DaySpan): Reading {
  const family = FORM.test(evidence.family) ? evidence.family : evidence.family.toUpperCase().replace(/[\s-]/g, '');
  const inFirstCycle = FORM.test(family) ? firstModelYearOf(family[0]!) : null;
  if (inFirstCycle === null) return saysNothing('not-a-family-code', () => sayForm(family));
  const earliest = evidence.engine === 'other' ? FIRST_MODEL_YEAR : FIRST_SMALL_SPARK_IGNITION_YEAR;
  const year = inFirstCycle >= earliest ? inFirstCycle : inFirstCycle + YEARS_IN_CYCLE;
  const { from } = modelYearWindow(year);
  if (from >= bounds.to) return saysNothing('no-such-date', () => sayNoYear(family, year, earliest));
  return says(notBefore(from), () => sayYears(family, year, bounds));
}

function sayYears(family: string, year: number, bounds: DaySpan): string {
  const windows = [year, year + YEARS_IN_CYCLE]
    .filter((one) => modelYearWindow(one).from < bounds.to)
    .map((one) => `${one} (built ${saySpan(modelYearWindow(one))})`);
  return `Engine family ${family}: engine of model year ${windows.join(' or ')}; the machine is not older than its engine.`;
}

function sayForm(family: string): string {
  return (
    `Engine family ${family} is not a family code; it must have 12 characters (letters, digits, a point in the displacement) and begin with a ` +
    'model-year character (a digit but 0, or a letter but I, O, Q, U and Z).'
  );
}

function sayNoYear(family: string, year: number, earliest: number): string {
  return (
    `Engine family ${family}: character ${family[0]} means model year ${year}, which has not begun; ` +
    `model years before ${earliest} are not possible for this engine.`
  );
}
