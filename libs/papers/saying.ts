import type { Manner } from '../contracts';
import { civilDateOf, dayOfInstant, formatDay, parseDay, sayDay, sayMonth } from '../day';

/** Days, instants, numbers and money in one manner of writing. */
export interface Saying {
  /** `2017-03-03` as `3 Mar 2017`, in the manner's own order and words; text that is no day is given back. */
  day(text: string): string;
  /** The same without the year: `3 Mar`. */
  dayOfYear(text: string): string;
  /** The month of a day: `Mar 2017`. */
  month(text: string): string;
  /** The civil day of an instant in the zone. */
  instantDay(text: string): string;
  /** An instant as its day and its time of day in the zone: `3 Mar 2017, 14:05`. */
  instant(text: string): string;
  money(minor: number, currency: string): string;
  /** With as many digits behind the point as it has, or with that many always. */
  number(value: number, digits?: number): string;
}

/** The words of a manner, for a time zone (IANA name). */
export function sayingIn(manner: Manner, zone: string): Saying {
  const year = { year: 'numeric' } as const;
  const month = { month: 'short' } as const;
  const dayOfMonth = { day: 'numeric' } as const;
  const clock = new Intl.DateTimeFormat(manner, { hour: '2-digit', minute: '2-digit', timeZone: zone });
  const numbers = new Intl.NumberFormat(manner, { maximumFractionDigits: 6 });
  // One English manner names the ninth month with four letters; the papers' sentences use three.
  const plain = manner === 'en-GB';
  const day = calendar(manner, { ...dayOfMonth, ...month, ...year }, plain ? sayDay : null);
  const dayOfYear = calendar(
    manner,
    { ...dayOfMonth, ...month },
    plain ? (at) => sayDay(at).replace(/ \d+$/, '') : null,
  );
  const instantDay = (text: string) => day(formatDay(dayOfInstant(new Date(text), zone)));
  return {
    day,
    dayOfYear,
    month: calendar(manner, { ...month, ...year }, plain ? sayMonth : null),
    instantDay,
    instant: (text) => `${instantDay(text)}, ${clock.format(new Date(text))}`,
    money: (minor, currency) => new Intl.NumberFormat(manner, { style: 'currency', currency }).format(minor / 100),
    number: (value, digits) =>
      digits === undefined
        ? numbers.format(value)
        : new Intl.NumberFormat(manner, { minimumFractionDigits: digits, maximumFractionDigits: digits }).format(value),
  };
}

/** Writes a day given as text; `own` says it where the manner's words are not taken from the runtime. */
function calendar(manner: Manner, parts: Intl.DateTimeFormatOptions, own: ((day: number) => string) | null) {
  const words = new Intl.DateTimeFormat(manner, { ...parts, timeZone: 'UTC' });
  return (text: string): string => {
    const value = parseDay(text);
    if (value === null) return text;
    if (own) return own(value);
    const { year, month, dayOfMonth } = civilDateOf(value);
    const at = new Date(0);
    at.setUTCFullYear(year, month - 1, dayOfMonth);
    return words.format(at);
  };
}
