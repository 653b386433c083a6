import { day, sayDay, sayPartialDate, spanOfPartialDate, type DaySpan } from '../day';
import type { EvidenceOf } from './evidence';
import { before, notBefore, says, saysNothing, type Reading } from './reading';

/** A printed build date: exactly the days it names. */
export function readPrintedDate({ date }: EvidenceOf<'printed-date'>): Reading {
  const span = spanOfPartialDate(date);
  if (!span) return noSuchDate('Printed build date', date);
  return says([span], () => `Build date printed on the plate: ${sayPartialDate(date)}.`);
}

/** A date stamp on a part: the machine is not older than the first day it can mean. */
export function readPartStamp({ part, date }: EvidenceOf<'part-stamp'>): Reading {
  const span = spanOfPartialDate(date);
  if (!span) return noSuchDate(`Date stamp on the ${part}`, date);
  return says(
    notBefore(span.from),
    () =>
      `Date stamp on the ${part}: ${sayPartialDate(date)}; if it is the part the machine was built with, ` +
      `it was built on or after ${sayDay(span.from)}.`,
  );
}

/** First and last production of the model, both included as precisely as they are known. */
export function readProductionSpan({ first, last }: EvidenceOf<'production-span'>): Reading {
  const begin = first === null ? null : spanOfPartialDate(first);
  const end = last === null ? null : spanOfPartialDate(last);
  if (first !== null && !begin) return noSuchDate('First production', first);
  if (last !== null && !end) return noSuchDate('Last production', last);
  const span: DaySpan = { from: begin?.from ?? -Infinity, to: end?.to ?? Infinity };
  if (span.from >= span.to)
    return saysNothing(
      'no-such-date',
      () => `Production span: the last production ${last} lies before the first, ${first}; it must not.`,
    );
  return says([span], () => sayProduction(first, last));
}

/** A receipt: the machine was built on or before the last day it can mean. */
export function readReceipt({ date }: EvidenceOf<'receipt'>): Reading {
  const span = spanOfPartialDate(date);
  if (!span) return noSuchDate('Receipt', date);
  return says(before(span.to), () => `Receipt of ${sayPartialDate(date)}: built on or before ${sayDay(span.to - 1)}.`);
}

/** The day the shop first saw it: built on or before that day. */
export function readFirstSeen({ on }: EvidenceOf<'first-seen'>): Reading {
  const seen = day(on);
  return says(before(seen + 1), () => `First seen in the shop on ${sayDay(seen)}: built on or before that day.`);
}

function sayProduction(first: string | null, last: string | null): string {
  const words = [first && `from ${sayPartialDate(first)}`, last && `until ${sayPartialDate(last)}`].filter(Boolean);
  return `The model was made ${words.join(' ')}, both included.`;
}

function noSuchDate(what: string, date: string): Reading {
  return saysNothing(
    'no-such-date',
    () => `${what}: ${date} is not a date; it must be a year, a month, an ISO week or a day, such as 2017-03-14.`,
  );
}
