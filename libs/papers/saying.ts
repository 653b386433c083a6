import type { Manner } from '../contracts';
import { civilDateOf, dayOfInstant, parseDay, sayDay } from '../day';

/** Days, instants and money in one manner of writing. */
export interface Saying {
  /** `2017-03-03` as `3 Mar 2017`, in the manner's own order and words; text that is no day is given back. */
  day(text: string): string;
  /** The civil day of an instant in the zone. */
  instantDay(text: string): string;
  money(minor: number, currency: string): string;
  number(value: number): string;
}

/** The words of a manner, for a time zone (IANA name). */
export function sayingIn(manner: Manner, zone: string): Saying {
  const days = new Intl.DateTimeFormat(manner, { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });
  const numbers = new Intl.NumberFormat(manner);
  const day = (text: string): string => {
    const value = parseDay(text);
    if (value === null) return text;
    // One English manner names the seventh-to-last month with four letters; the papers' sentences use three.
    if (manner === 'en-GB') return sayDay(value);
    const { year, month, dayOfMonth } = civilDateOf(value);
    const at = new Date(0);
    at.setUTCFullYear(year, month - 1, dayOfMonth);
    return days.format(at);
  };
  return {
    day,
    instantDay: (text) => sayInstantIn(text, zone, day),
    money: (minor, currency) => new Intl.NumberFormat(manner, { style: 'currency', currency }).format(minor / 100),
    number: (value) => numbers.format(value),
  };
}

function sayInstantIn(text: string, zone: string, day: (text: string) => string): string {
  const { year, month, dayOfMonth } = civilDateOf(dayOfInstant(new Date(text), zone));
  const two = (value: number) => String(value).padStart(2, '0');
  return day(`${String(year).padStart(4, '0')}-${two(month)}-${two(dayOfMonth)}`);
}
