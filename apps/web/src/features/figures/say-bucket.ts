import { civilDateOf, day } from '../../../../../libs/day';
import { sayDayOfYear, sayMonthText } from '../../lib/say';

/** A part of a span under its bar: `Mar 2026` for a month and what is left of one, `5 Oct` for a week. */
export function sayBucket({ from, to }: { from: string; to: string }): string {
  const [first, end] = [day(from), day(to)];
  const wholeMonth = civilDateOf(first).dayOfMonth === 1 && civilDateOf(end).dayOfMonth === 1;
  return wholeMonth || end - first > 7 ? sayMonthText(from) : sayDayOfYear(from);
}
