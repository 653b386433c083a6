import type { KnownOtherwise, TrailEntry } from '../../../../../libs/contracts';
import { formatDay } from '../../../../../libs/day';
import { sayDayText, sayInstant } from '../../lib/say';

const NOUNS: Record<string, string> = {
  unit: 'the unit',
  evidence: 'evidence of when it was built',
  ticket: 'the ticket',
  place_record: 'what was found or left at a place',
  pick: 'a picked part',
  flag: 'a flag',
  callback: 'a call to the owner',
  callback_reason: 'the reason of a call',
  callback_attempt: 'a try to reach the owner',
  verdict_change: 'the verdict',
  estimate: 'an estimate',
  photo: 'a photo',
  unit_note: 'a note for the next visit',
};
const ACTS: Record<string, string> = { insert: 'Wrote down', update: 'Changed', delete: 'Removed' };

/** Columns that only the program itself reads. */
const UNSAID =
  /^(id|version|name|width|height|sha256|sent_sha256|place|candidates|built_from|built_to)$|_(id|ids|by|key|search)$/;

/** A set of days as the database writes it: the numbers of days since 1970, closed-open. */
const DAY_SET = /^\{(\[-?\d+,-?\d+\),?)*\}$/;
const SPAN = /\[(-?\d+),(-?\d+)\)/g;

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d/;

/** What was done, in a few words: `Changed the ticket`. */
export function sayAct({ act, noun, change }: TrailEntry): string {
  if (noun === 'verdict_change') return change['from_verdict'] === null ? 'Judged' : 'The verdict changed';
  return `${ACTS[act] ?? sayName(act)} ${NOUNS[noun] ?? sayName(noun).toLowerCase()}`;
}

/** What a change holds, as `name: value` or `name: before, then after`; empty for a verdict, which is shown as one. */
export function sayChange({ act, noun, change }: TrailEntry): readonly { name: string; value: string }[] {
  if (noun === 'verdict_change') return [];
  return Object.entries(change)
    .filter(([name, value]) => !UNSAID.test(name) && !isEmpty(value))
    .map(([name, value]) => ({ name: sayName(name), value: act === 'update' ? saySides(value) : sayValue(value) }));
}

function saySides(value: unknown): string {
  if (!Array.isArray(value) || value.length !== 2) return sayValue(value);
  return `${sayValue(value[0])} \u2192 ${sayValue(value[1])}`;
}

function sayValue(value: unknown): string {
  if (isEmpty(value)) return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.map(sayValue).join(', ');
  if (typeof value === 'string' && INSTANT.test(value)) return sayInstant(value);
  if (typeof value === 'string' && DAY_SET.test(value)) return sayDays(value);
  if (typeof value !== 'object') return typeof value === 'string' ? value : JSON.stringify(value);
  return Object.entries(value as object)
    .filter(([, part]) => !isEmpty(part))
    .map(([name, part]) => `${sayName(name).toLowerCase()} ${sayValue(part)}`)
    .join(', ');
}

/** `{[17226,17257)}` as `1 Mar 2017 to 31 Mar 2017`. */
function sayDays(text: string): string {
  const spans = [...text.matchAll(SPAN)].map(([, from, to]) => [Number(from), Number(to) - 1] as const);
  if (spans.length === 0) return 'no day at all';
  return spans
    .map(([first, last]) => [first, last].map((one) => sayDayText(formatDay(one))).join(' to '))
    .join(', or ');
}

/** What was known at that moment: the newest revision of the rulebook, and what made it. */
export function sayKnown({ revision, known }: TrailEntry): string {
  if (revision === null) return 'There was no rulebook yet';
  const made = known === 'seed' ? ', as the shop began' : known ? `, made by ${known}` : '';
  return `Known then: rulebook revision ${revision}${made}`;
}

const OTHERWISE: Record<KnownOtherwise, string> = {
  line: 'its product line',
  model: 'its model',
  options: 'its options',
  serial: 'how its serial number reads',
  'build-days': 'when it can have been built',
};

/** Which of what the ruling rests on became known otherwise since; empty when nothing did. */
export function sayOtherwise({ otherwise }: NonNullable<TrailEntry['ruling']>): string {
  if (otherwise.length === 0) return '';
  const names = otherwise.map((one) => OTHERWISE[one]);
  const last = names.pop()!;
  return `Known otherwise since then: ${names.length > 0 ? `${names.join(', ')} and ${last}` : last}.`;
}

const isEmpty = (value: unknown): boolean =>
  value === null ||
  value === '' ||
  (Array.isArray(value) && value.length === 0) ||
  (typeof value === 'object' && Object.keys(value).length === 0);

/** `left_out_why` and `leftOutWhy` as `Left out why`. */
function sayName(name: string): string {
  const words = name.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/[_-]/g, ' ');
  return words.charAt(0).toUpperCase() + words.slice(1).toLowerCase();
}
