import { z } from 'zod';
import { day, formatDay, parseDay, spanOfPartialDate, type DaySet, type DaySpan } from '../day';

/** A civil day as text, `YYYY-MM-DD`. */
export const WrittenDaySchema = z.string().refine((text) => parseDay(text) !== null, {
  error: (issue) => `${JSON.stringify(issue.input)} is not a day; write it as YYYY-MM-DD, such as 2017-03-14`,
});

/** A date as precise as it was read: `2017`, `2017-03`, `2017-W09` (ISO week) or `2017-03-14`. */
export const PartialDateSchema = z.string().refine((text) => spanOfPartialDate(text) !== null, {
  error: (issue) =>
    `${JSON.stringify(issue.input)} is not a date; write a year (2017), a month (2017-03), a week (2017-W09) or a day (2017-03-14)`,
});

/** Days `from` up to, but not including, `to`, as text. */
export const WrittenSpanSchema = z.object({ from: WrittenDaySchema, to: WrittenDaySchema });
export type WrittenSpan = z.infer<typeof WrittenSpanSchema>;

/** A set of days as text: sorted closed-open spans. Answers are bounded, so no side is ever open. */
export const WrittenDaysSchema = z.array(WrittenSpanSchema);
export type WrittenDays = z.infer<typeof WrittenDaysSchema>;

/** Writes a bounded day set for the wire. */
export function writeDays(days: DaySet): WrittenDays {
  return days.map(({ from, to }) => ({ from: formatDay(from), to: formatDay(to) }));
}

/** Reads days that were written by {@link writeDays}; throws for text that is no day. */
export function readWrittenDays(written: readonly WrittenSpan[]): DaySpan[] {
  return written.map(({ from, to }) => ({ from: day(from), to: day(to) }));
}
