import { dayOf, daysInMonth, formatDay, parseDay, spanOfPartialDate } from '../day';
import { bad, good, shown, textOfCell, type Cell, type Reading } from './cell';
import { withoutGuard, type DayOrder, type Reader } from './readers';

const MONTHS: Readonly<Record<string, number>> = Object.fromEntries(
  'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ').map((name, i) => [name, i + 1]),
);
/** 1 Jan 1950 to 31 Dec 2099 as a spreadsheet counts days. */
const [FIRST_NUMBER, LAST_NUMBER] = [18_264, 73_050];
/** Day numbers of a spreadsheet count from 30 Dec 1899, and with some older programs from 1 Jan 1904. */
const [EPOCH_1900, EPOCH_1904] = [dayOf(1899, 12, 30), dayOf(1904, 1, 1)];

/**
 * A civil day as `YYYY-MM-DD`. Year first is always read; day and month first only in the order the person named,
 * unless one of the two can be no month. A spreadsheet's day number is refused: it counts from one of two days.
 */
export const dayIn: Reader<string> = (cell, { dayOrder }) => readDay(cell, dayOrder);

/** A date of any precision: 2017, 2017-03, 2017-W09, 2017-03-14, or a day as {@link dayIn} reads it. */
export const partialDate: Reader<string> = (cell, { dayOrder }) => {
  const text = withoutGuard(textOfCell(cell)).trim().toUpperCase();
  return spanOfPartialDate(text) ? good(text) : readDay(cell, dayOrder);
};

function readDay(cell: Cell, order: DayOrder | null): Reading<string> {
  if (typeof cell === 'object' && cell !== null && 'date' in cell) return good(cell.date);
  const text = withoutGuard(textOfCell(cell)).trim();
  if (parseDay(text) !== null) return good(text);
  if (/^\d{5}([.,]\d+)?$/.test(text)) return dayNumber(text);
  const named =
    /^(\d{1,2})[. -]+([a-z]{3})[a-z]*\.?[, -]+(\d{4})$/i.exec(text) ??
    swapped(/^([a-z]{3})[a-z]*\.? +(\d{1,2}),? +(\d{4})$/i.exec(text));
  if (named) return civil(text, Number(named[3]), MONTHS[named[2]!.toLowerCase()] ?? 0, Number(named[1]));
  const yearFirst = /^(\d{4})[-./](\d{1,2})[-./](\d{1,2})([ T]00:00(:00)?(\.0+)?Z?)?$/.exec(text);
  if (yearFirst) return civil(text, Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3]));
  const yearLast = /^(\d{1,2})[-./](\d{1,2})[-./](\d{4})$/.exec(text);
  if (yearLast) return byOrder(text, Number(yearLast[1]), Number(yearLast[2]), Number(yearLast[3]), order);
  return bad('not-accepted', `${shown(cell)} is no day; write it as YYYY-MM-DD, such as 2017-03-14.`);
}

const swapped = (found: RegExpExecArray | null): readonly string[] | null =>
  found && [found[0], found[2]!, found[1]!, found[3]!];

function byOrder(text: string, a: number, b: number, year: number, order: DayOrder | null): Reading<string> {
  if (a > 12) return civil(text, year, b, a);
  if (b > 12) return civil(text, year, a, b);
  if (a === b) return civil(text, year, a, b);
  if (order === 'day-month-year') return civil(text, year, b, a);
  if (order === 'month-day-year') return civil(text, year, a, b);
  return bad('day-order', `"${text}" can be two days; say whether the day or the month comes first.`);
}

function civil(text: string, year: number, month: number, dayOfMonth: number): Reading<string> {
  if (year < 1900 || year > 2099 || month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > daysInMonth(year, month))
    return bad('not-accepted', `"${text}" is no day that exists from 1900 to 2099; write it as YYYY-MM-DD.`);
  return good(formatDay(dayOf(year, month, dayOfMonth)));
}

function dayNumber(text: string): Reading<string> {
  const number = Math.floor(Number(text.replace(',', '.')));
  if (number < FIRST_NUMBER || number > LAST_NUMBER)
    return bad('not-accepted', `"${text}" is no day; write it as YYYY-MM-DD, such as 2017-03-14.`);
  const [one, other] = [formatDay(EPOCH_1900 + number), formatDay(EPOCH_1904 + number)];
  return bad(
    'day-number',
    `"${text}" is how a spreadsheet counts days: ${one}, or ${other} on another machine; write it as YYYY-MM-DD.`,
  );
}
