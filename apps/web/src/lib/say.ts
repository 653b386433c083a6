import { dayOfInstant, parseDay, sayDay, saySpan } from '../../../../libs/day';

/** `2017-03-03` as `3 Mar 2017`; text that is no day is given back. */
export function sayDayText(text: string): string {
  const value = parseDay(text);
  return value === null ? text : sayDay(value);
}

const zone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

/** An instant as `3 Mar 2017, 14:05` in the zone of the device. */
export function sayInstant(text: string): string {
  const at = new Date(text);
  const clock = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' }).format(at);
  return `${sayDay(dayOfInstant(at, zone()))}, ${clock}`;
}

/** The day of an instant as `3 Mar 2017` in the zone of the device. */
export function sayInstantDay(text: string): string {
  return sayDay(dayOfInstant(new Date(text), zone()));
}

/** Today on this device as `YYYY-MM-DD`. */
export function todayText(): string {
  return new Intl.DateTimeFormat('en-CA', { year: 'numeric', month: '2-digit', day: '2-digit' }).format(new Date());
}

/** A closed-open span of day texts in words, both days inside it. */
export function saySpanText({ from, to }: { from: string | null; to: string | null }): string {
  return saySpan({
    from: from === null ? -Infinity : (parseDay(from) ?? -Infinity),
    to: to === null ? Infinity : (parseDay(to) ?? Infinity),
  });
}

/** Several spans in words: `3 Mar 2017 to 4 Apr 2017 or 1 May 2018 to 2 Jun 2018`. */
export function saySpans(spans: readonly { from: string | null; to: string | null }[]): string {
  return spans.map(saySpanText).join(' or ');
}

/** `1 place`, `3 places`. */
export function count(many: number, one: string, more = `${one}s`): string {
  return `${many} ${many === 1 ? one : more}`;
}

/** Minor units as money of the shop's currency. */
export function sayMoney(minor: number, currency: string): string {
  return new Intl.NumberFormat(undefined, { style: 'currency', currency }).format(minor / 100);
}

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
