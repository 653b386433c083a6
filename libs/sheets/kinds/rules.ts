import { actions, barReasons, sourceKinds, type BarReason } from '../../fit-rules';
import { bad, good, shown } from '../cell';
import { column, kind, mustHave, type RowOf } from '../column';
import { dayIn } from '../read-day';
import { listOf, nameOf, oneOf, words, type Reader } from '../readers';
import { escapeMarks, unescapeMarks } from './escape';
import { fittedOption, hasValue, writeOptions } from './owners';

/** A part in a rule: its number as printed, or MAKER/NUMBER. */
const rulePart = nameOf(60);

export interface BarCell {
  readonly part: string;
  readonly reason: BarReason;
  readonly note: string;
  readonly voidsWarranty?: true;
}

const BAR_MARKS = /[;|\n)]/g;

/**
 * `70-499 (breaks-later: the gear case breaks first)`: the part, why it is barred, and the paper's words;
 * `70-499 (breaks-later, voids warranty)` for one that ends the warranty too.
 */
const bar: Reader<BarCell> = (cell, how) => {
  const text = words(1_300)(cell, how);
  if (!text.ok) return text;
  const found = /^([^(]+?)\s*(?:\(([a-z-]+)(,\s*voids warranty)?(?::\s*([^)]*))?\))?$/i.exec(text.value);
  const reason = barReasons.find((one) => one === (found?.[2]?.toLowerCase() ?? 'other'));
  if (!found || !reason)
    return bad(
      'not-accepted',
      `${shown(cell)} must be a part and why it is barred, such as 70-499 (breaks-later: the gear case breaks first); reasons are ${barReasons.join(', ')}.`,
    );
  const part = rulePart(found[1]!, how);
  if (!part.ok) return part;
  const note = unescapeMarks(found[4] ?? '').trim();
  return good({ part: part.value, reason, note, ...(found[3] ? { voidsWarranty: true as const } : {}) });
};

const wordsOf = <T extends string>(all: readonly T[]) =>
  Object.fromEntries(all.map((one) => [one, []])) as unknown as Readonly<Record<T, readonly string[]>>;

const columns = {
  paper: mustHave('Paper', words(60), {
    also: ['bulletin', 'bulletin number', 'paper number', 'source', 'number', 'document'],
    says: 'Number of the paper that says it. Rows with the same paper and publisher become one bulletin.',
    example: 'SB-12',
  }),
  publisher: mustHave('Publisher', words(120), {
    also: ['published by', 'maker', 'manufacturer'],
    says: 'Who published it.',
    example: 'Holmgard',
  }),
  paperKind: column('Kind of paper', oneOf(wordsOf(sourceKinds)), {
    also: ['kind', 'type', 'document type'],
    says: `${sourceKinds.join(', ')}. Blank is service-bulletin.`,
    example: 'service-bulletin',
  }),
  title: mustHave('Title', words(200), { also: ['subject'], says: 'Title of the paper.', example: 'Auger pins' }),
  issued: mustHave('Issued', dayIn, {
    also: ['issue date', 'issued on', 'date'],
    says: 'The day it was issued.',
    example: '2026-03-01',
  }),
  effective: column('In effect from', dayIn, {
    also: ['effective', 'effective date'],
    says: 'The day it takes effect; blank is when it was issued.',
    example: '',
  }),
  received: column('Received', dayIn, {
    also: ['received on'],
    says: 'The day the shop received it; blank is today.',
    example: '2026-03-04',
  }),
  summary: column('Summary', words(4_000), { says: 'What it says, in a few words.', example: '' }),
  key: mustHave('Rule', nameOf(80), {
    also: ['rule key', 'key', 'rule number'],
    says: 'A key for the rule, different from every other.',
    example: 'SB-12-1',
  }),
  line: mustHave('Line', nameOf(80), {
    also: ['product line', 'line code', 'series'],
    says: 'Code of the product line.',
    example: 'SNOW-2',
  }),
  models: column('Models', listOf(nameOf(80), 200), {
    also: ['model'],
    says: 'Only these models; blank is all.',
    example: '',
  }),
  options: column('Options', listOf(fittedOption, 8), {
    also: ['option'],
    says: 'Only units with the option (cab), or without it (no cab).',
    example: '',
    write: writeOptions,
  }),
  positions: mustHave('Positions', listOf(nameOf(80), 200), {
    also: ['position', 'pos'],
    says: 'Codes of the positions, between semicolons.',
    example: 'AUG-PIN',
  }),
  builtFrom: column('Built from', dayIn, {
    also: ['from build date'],
    says: 'Units built from this day on; blank is all.',
    example: '2016-01-01',
  }),
  builtUntil: column('Built until', dayIn, {
    also: ['built before'],
    says: 'The first build day that is no longer meant.',
    example: '',
  }),
  scheme: column('Serial scheme', words(80), {
    says: 'Code of the serial scheme that Serials from and until are keys of.',
    example: '',
  }),
  serialFrom: column('Serials from', nameOf(40), {
    also: ['serial from'],
    says: 'Key of the first serial that is meant.',
    example: '',
  }),
  serialUntil: column('Serials until', nameOf(40), {
    also: ['serial to'],
    says: 'Key of the first serial that is no longer meant.',
    example: '',
  }),
  inForceFrom: column('In force from', dayIn, { says: "Blank is the paper's day.", example: '' }),
  inForceUntil: column('In force until', dayIn, {
    says: 'The first day on which it no longer holds; blank is open.',
    example: '',
  }),
  required: column('Required', rulePart, {
    also: ['required part', 'part', 'part number', 'use'],
    says: 'The part that belongs there: its number as the maker prints it, or MAKER/NUMBER.',
    example: '70-412B',
  }),
  allowed: column('Allowed too', listOf(rulePart), {
    also: ['allowed', 'alternatives', 'or'],
    says: 'Parts that may be there too.',
    example: '',
  }),
  barred: column('Barred', listOf(bar), {
    also: ['do not use', 'not allowed', 'forbidden'],
    says: `Parts that must not be there, each with why in brackets: ${barReasons.join(', ')}, ", voids warranty" where the paper says so, and its words after a colon.`,
    example: '70-499 (breaks-later: the gear case breaks first)',
    write: (bars) => bars.map(writeBar).join('; '),
  }),
  action: column('Units already out', oneOf(wordsOf(actions)), {
    also: ['action', 'what to do'],
    says: `${actions.join(', ')}. Blank is nothing.`,
    example: 'call-back',
  }),
  replaces: column('Replaces', listOf(nameOf(80)), {
    also: ['supersedes'],
    says: 'Keys of the rules that it takes the place of.',
    example: '',
  }),
};
export type RuleSheetRow = RowOf<typeof columns>;

function writeBar({ part, reason, note, voidsWarranty }: BarCell): string {
  return `${part} (${reason}${voidsWarranty ? ', voids warranty' : ''}${note === '' ? '' : `: ${escapeMarks(note, BAR_MARKS)}`})`;
}

export const rules = kind({
  title: 'Fit rules of papers',
  about: 'One rule of one paper.',
  columns,
  names: [],
  keyOf: ({ publisher, paper }) => JSON.stringify([publisher.toLowerCase(), paper.toLowerCase()]),
  check(row) {
    const problems: { field: keyof typeof columns; says: string }[] = [];
    const late = (field: keyof typeof columns, from?: string | null, to?: string | null) => {
      if (from && to && to <= from)
        problems.push({ field, says: `It must be later than ${from}; the day itself is not included.` });
    };
    late('builtUntil', row.builtFrom, row.builtUntil);
    late('inForceUntil', row.inForceFrom, row.inForceUntil);
    if ((row.serialFrom || row.serialUntil) && !row.scheme)
      problems.push({ field: 'scheme', says: 'Serials are named, but not the scheme they are keys of.' });
    if (!row.required && !hasValue(row.allowed) && !hasValue(row.barred) && !hasValue(row.replaces))
      problems.push({ field: 'required', says: 'A rule must require, allow or bar a part, or replace a rule.' });
    return problems;
  },
});
