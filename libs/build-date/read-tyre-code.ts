import { sayDay, type DaySpan } from '../day';
import type { EvidenceOf } from './evidence';
import { notBefore, says, saysNothing, type Reading } from './reading';
import { tyreWeeks, type TyreWeek } from './tyre-rules';

/** A floor for the machine by the week its tyre was made; the earliest decade sets it where three digits leave several. */
export function readTyreCode(evidence: EvidenceOf<'tyre-code'>, bounds: DaySpan): Reading {
  const code = evidence.code.replace(/\s/g, '');
  const weeks = tyreWeeks(code, bounds);
  if (weeks === null)
    return saysNothing(
      'not-a-tyre-code',
      () => `Tyre code ${code} is not a date code; it must be four digits (week and year) or three (before 2000).`,
    );
  if (weeks.length === 0)
    return saysNothing(
      'no-such-date',
      () => `Tyre code ${code} names a week that has not been; the first two digits are the week, the rest the year.`,
    );
  return says(notBefore(weeks[0]!.start), () => sayWeeks(code, weeks));
}

function sayWeeks(code: string, weeks: TyreWeek[]): string {
  const read = weeks.map(({ week, year }) => `week ${week} of ${year}`).join(' or ');
  return (
    `Tyre code ${code}: ${read}; if this tyre is the one the machine was built with, ` +
    `it was built on or after ${sayDay(weeks[0]!.start)}.`
  );
}
