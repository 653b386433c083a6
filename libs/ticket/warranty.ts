import { addMonths, sayDay, type Day } from '../day';

/** When a unit was bought, and for how many months from then its maker stands for it. */
export interface WarrantyTerm {
  readonly boughtOn: Day;
  readonly months: number;
}

/**
 * The first day on which the warranty no longer runs. A term of months ends with the day that has the number of the day
 * of purchase, or with the last of a month that is too short for it: the rule of Regulation (EEC, Euratom) No 1182/71,
 * article 3 (2) (c), from memory; the maker's papers may count otherwise, and come first.
 */
export function warrantyUntil({ boughtOn, months }: WarrantyTerm): Day {
  return addMonths(boughtOn, months) + 1;
}

/** True on the days on which the warranty runs; the day of purchase and the last day of the term are among them. */
export function runsOn(term: WarrantyTerm, on: Day): boolean {
  return on >= term.boughtOn && on < warrantyUntil(term);
}

/** `Bought 3 Mar 2025, under warranty for 24 months: up to and including 3 Mar 2027.` */
export function sayWarranty(term: WarrantyTerm, today: Day): string {
  const last = sayDay(warrantyUntil(term) - 1);
  const months = term.months === 1 ? '1 month' : `${term.months} months`;
  return runsOn(term, today)
    ? `Bought ${sayDay(term.boughtOn)}, under warranty for ${months}: up to and including ${last}.`
    : `Bought ${sayDay(term.boughtOn)}; its warranty of ${months} ended with ${last}.`;
}
