import type { KnownOtherwise, TrailEntry } from '../../../../../libs/contracts';
import { formatDay } from '../../../../../libs/day';
import { capital, sayDayText, sayInstant, sayNumber, STAGE_WORDS } from '../../lib/say';
import { sayCode, sayEvidenceField } from './code-words';

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
  callback_mail: 'an e-mail about a call',
  shelf_movement: 'a movement of stock',
  part_wait: 'a part the ticket waits for',
};
const ACTS: Record<string, string> = { insert: 'Wrote down', update: 'Changed', delete: 'Removed' };

/** Columns that only the program itself reads. */
const UNSAID =
  /^(id|version|name|width|height|sha256|sent_sha256|place|candidates|built_from|built_to|wording|tries|bench_rank|pick)$|_(id|ids|by|key|search|rank)$/;

/** A set of days as the database writes it: the numbers of days since 1970, closed-open. */
const DAY_SET = /^\{(\[-?\d+,-?\d+\),?)*\}$/;
const SPAN = /\[(-?\d+),(-?\d+)\)/g;

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d/;
const DAY = /^\d{4}-\d\d-\d\d$/;
/** Sums are kept in the smallest coin, and rates in hundredths of a percent. */
const MINOR = /(^minor|_minor|Minor)$/;
const BASIS_POINTS = /_basis_points$/;

/** What was done, in a few words: `Changed the ticket`. */
export function sayAct({ act, noun, change }: TrailEntry): string {
  if (noun === 'verdict_change') return change['from_verdict'] === null ? 'Judged' : 'The verdict changed';
  if (noun === 'ticket_event') return sayEvent(change);
  return `${ACTS[act] ?? sayName(act)} ${NOUNS[noun] ?? sayName(noun).toLowerCase()}`;
}

/** What of a ticket's history stands in the trail: why it went back, and that its owner was erased. */
function sayEvent({ kind, data }: TrailEntry['change']): string {
  if (kind === 'owner-erased') return 'Erased what was known of the owner';
  const { from, to } = (data ?? {}) as Record<string, unknown>;
  return `Sent the ticket back from ${stageWords(from)} to ${stageWords(to)}`;
}

const stageWords = (stage: unknown): string =>
  (STAGE_WORDS[stage as keyof typeof STAGE_WORDS] ?? String(stage)).toLowerCase();

/** What a change holds, as `name: value` or `name: before, then after`; empty for a verdict, which is shown as one. */
export function sayChange(entry: TrailEntry): readonly { name: string; value: string }[] {
  const { act, noun, change } = entry;
  if (noun === 'verdict_change') return [];
  if (noun === 'ticket_event') return reasonIn(change['data']);
  if (noun === 'evidence' && act !== 'update') return sayEvidence(change);
  return Object.entries(change)
    .filter(([column, value]) => !UNSAID.test(column) && !isEmpty(value))
    .map(([column, value]) => ({
      name: sayName(column),
      value: act === 'update' ? saySides(noun, column, value) : sayValue(noun, column, value),
    }));
}

function reasonIn(data: unknown): readonly { name: string; value: string }[] {
  const { reason } = (data ?? {}) as Record<string, unknown>;
  return typeof reason === 'string' && reason !== '' ? [{ name: 'Reason', value: reason }] : [];
}

/** A piece of evidence under the labels of the form it was typed into. */
function sayEvidence({ data, ...change }: TrailEntry['change']): readonly { name: string; value: string }[] {
  const fields = Object.entries((data ?? {}) as Record<string, unknown>).filter(([, value]) => !isEmpty(value));
  return [
    ...Object.entries(change)
      .filter(([column, value]) => !UNSAID.test(column) && !isEmpty(value))
      .map(([column, value]) => ({ name: sayName(column), value: sayValue('evidence', column, value) })),
    ...fields.map(([name, value]) => {
      const said = sayEvidenceField(change['kind'], name, sayValue('evidence', name, value));
      return { name: said.label ?? sayName(name), value: said.value };
    }),
  ];
}

function saySides(noun: string, column: string, value: unknown): string {
  if (!Array.isArray(value) || value.length !== 2) return sayValue(noun, column, value);
  return `${sayValue(noun, column, value[0])} \u2192 ${sayValue(noun, column, value[1])}`;
}

function sayValue(noun: string, column: string, value: unknown): string {
  if (isEmpty(value)) return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return sayQuantity(column, value);
  if (typeof value === 'string') return sayText(noun, column, value);
  if (Array.isArray(value)) return value.map((one) => sayValue(noun, column, one)).join('; ');
  return sayObject(noun, value as Readonly<Record<string, unknown>>);
}

function sayText(noun: string, column: string, value: string): string {
  if (INSTANT.test(value)) return sayInstant(value);
  if (DAY.test(value)) return sayDayText(value);
  if (DAY_SET.test(value)) return sayDays(value);
  return sayCode(noun, column, value);
}

function sayQuantity(column: string, value: number): string {
  if (MINOR.test(column)) return sayNumber(value / 100, 2);
  return BASIS_POINTS.test(column) ? `${sayNumber(value / 100)} %` : sayNumber(value);
}

/** What stands inside a column; where the program has put it into a sentence already, that sentence. */
function sayObject(noun: string, value: Readonly<Record<string, unknown>>): string {
  if (typeof value['sentence'] === 'string') return value['sentence'];
  return Object.entries(value)
    .filter(([, part]) => !isEmpty(part))
    .map(([name, part]) => `${sayName(name).toLowerCase()} ${sayValue(noun, name, part)}`)
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

/** What makes a new revision of the rulebook, by its cause; where a paper did, its number follows. */
const CAUSES: Record<string, string> = {
  seed: 'as the shop began',
  publish: 'made by publishing',
  withdraw: 'made by withdrawing',
  'in-force': 'made by the coming into force of',
  import: 'made by bringing in a file',
  standing: 'made by a change of which papers count more',
};

/** What was known at that moment: the newest revision of the rulebook, and what made it. */
export function sayKnown({ revision, known }: TrailEntry): string {
  if (revision === null) return 'There was no rulebook yet';
  const [cause = '', paper = ''] = (known ?? '').split(/ of (.*)/);
  const made = known ? `, ${CAUSES[cause] ?? `made by ${cause}`}${paper ? ` ${paper}` : ''}` : '';
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

/** Columns that are better named otherwise than by the words in them. */
const NAMES: Readonly<Record<string, string>> = {
  left_out_why: 'Left out because',
  set_aside_why: 'Set aside because',
  removed_why: 'Taken away because',
  closed_why: 'Closed because',
  withdrawn_why: 'No longer needed because',
  decision_why: 'Why it was decided so',
  serial_absent: 'No serial number because',
  serial_scheme: 'Serial number is read by',
  built: 'Possible build days',
  part_text: 'Number as it was read',
  told: 'How the part was told',
  side: 'Looked at',
  plate: 'Plate',
  tax_included: 'Tax is in the prices',
  tax_basis_points: 'Tax rate',
  labour_minutes: 'Minutes of labour',
  detail: 'What the owner is told',
  reserved: 'Pieces reserved',
  minor: 'Amount',
};

/** `fitted_on` and `fittedOn` as `Fitted on`; sums without the word for the smallest coin. */
function sayName(name: string): string {
  if (NAMES[name]) return NAMES[name];
  const words = name
    .replace(MINOR, '')
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replace(/[_-]/g, ' ');
  return capital(words.toLowerCase());
}
