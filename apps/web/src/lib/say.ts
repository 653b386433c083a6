import { USUAL_PRINTS, type Reading, type TorqueUnit } from '../../../../libs/contracts';
import { readerOf, type Reader, type TorqueRange } from '../../../../libs/papers';

const zone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;
const readerFor = (reading: Reading): Reader => readerOf(reading, zone());

/*
 * Every day, number, sum, torque and length on the page is written here, as the person at the page reads it. One person
 * is at a page at a time: who signs in brings their reading, and every page is written anew when it changes.
 */
let reader = readerFor(USUAL_PRINTS);

let written = JSON.stringify(reader.reading);
const toldOf = new Set<() => void>();

/** From now on the page writes for somebody who reads so; the usual where nobody is signed in. */
export function writeFor(reading: Reading | undefined): void {
  reader = readerFor(reading ?? USUAL_PRINTS);
  const now = JSON.stringify(reader.reading);
  if (now === written) return;
  written = now;
  for (const tell of toldOf) tell();
}

/** How the page is written now, to be compared. */
export const readingNow = (): string => written;

/** Tells whenever that changes; returns how to be told no more. */
export function onReading(tell: () => void): () => void {
  toldOf.add(tell);
  return () => void toldOf.delete(tell);
}

/** The unit the person at the page reads torques in first. */
export const torqueFirst = (): TorqueUnit => reader.reading.torque;

/** `2017-03-03` as `3 Mar 2017`; text that is no day is given back. */
export const sayDayText = (text: string): string => reader.day(text);

/** The same without its year. */
export const sayDayOfYear = (text: string): string => reader.dayOfYear(text);

/** The month of a day: `Mar 2017`. */
export const sayMonthText = (text: string): string => reader.month(text);

/** An instant as `3 Mar 2017, 14:05` in the zone of the device. */
export const sayInstant = (text: string): string => reader.instant(text);

/** The day of an instant as `3 Mar 2017` in the zone of the device. */
export const sayInstantDay = (text: string): string => reader.instantDay(text);

/** Today on this device as `YYYY-MM-DD`. */
export function todayText(): string {
  return new Intl.DateTimeFormat('en-CA', { year: 'numeric', month: '2-digit', day: '2-digit' }).format(new Date());
}

/** A closed-open span of day texts in words, both days inside it. */
export const saySpanText = (span: { from: string | null; to: string | null }): string => reader.span(span);

/** Several spans in words: `3 Mar 2017 to 4 Apr 2017 or 1 May 2018 to 2 Jun 2018`. */
export function saySpans(spans: readonly { from: string | null; to: string | null }[]): string {
  return spans.map(saySpanText).join(' or ');
}

/** A number; `digits` behind the point where it always has as many. */
export const sayNumber = (value: number, digits?: number): string => reader.number(value, digits);

/** A torque or a range of torques in N·m, in both units. */
export const sayTorque = (nm: TorqueRange, first?: TorqueUnit): string => reader.torque(nm, first);

/** A length in millimetres, in both units. */
export const sayLength = (mm: number): string => reader.length(mm);

/** A sentence of the program, with the days, torques and lengths in it as the person reads them. */
export const saySentence = (text: string): string => reader.sentence(text);

/** Words with a capital at their beginning. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** `1 place`, `3 places`. */
export function count(many: number, one: string, more = `${one}s`): string {
  return `${sayNumber(many)} ${many === 1 ? one : more}`;
}

/** Minor units as money of the shop's currency. */
export const sayMoney = (minor: number, currency: string): string => reader.money(minor, currency);

/** `12.50` or `12,50` as minor units; null for anything else. */
export function readMoney(text: string): number | null {
  const match = /^\s*(\d{1,6})(?:[.,](\d{1,2}))?\s*$/.exec(text);
  return match ? Number(match[1]) * 100 + Number((match[2] ?? '0').padEnd(2, '0')) : null;
}

export const STAGE_WORDS = {
  intake: 'Intake',
  inspection: 'Inspection',
  'parts-selection': 'Parts selection',
  repair: 'Repair',
  handover: 'Handover',
} as const;

export const SOURCE_WORDS: Record<string, string> = {
  'owners-manual': "Owner's manual",
  'parts-list': 'Parts list',
  'revised-parts-list': 'Revised parts list',
  'service-bulletin': 'Service bulletin',
  'makers-advice': "Maker's advice",
  'shop-finding': 'Shop finding',
};

export const ACTION_WORDS = {
  nothing: 'Nothing',
  'next-service': 'At next service',
  'call-back': 'Call back',
  'stop-use': 'Stop use',
} as const;
