import { parseDay } from '../../../../../libs/day';
import type { Action, BarReason } from '../../../../../libs/fit-rules';
import { EMPTY_RULE, type TypedRule } from './typed-rule';
import { listed } from './typed-rule';

/** What a pasted table gave: the rules, or one sentence for each cell that could not be read. */
export type PastedRules = { ok: true; rules: Omit<TypedRule, 'key' | 'line'>[] } | { ok: false; problems: string[] };

const COLUMNS = ['position', 'model', 'first', 'last', 'required', 'allowed', 'barred', 'reason', 'action'] as const;
type Column = (typeof COLUMNS)[number];

/** Other headings people write over the same column. */
const HEADINGS: Record<string, Column> = {
  position: 'position',
  positions: 'position',
  model: 'model',
  models: 'model',
  'built from': 'first',
  from: 'first',
  first: 'first',
  'built until': 'last',
  until: 'last',
  last: 'last',
  required: 'required',
  allowed: 'allowed',
  barred: 'barred',
  reason: 'reason',
  action: 'action',
};
const ACTIONS: readonly Action[] = ['nothing', 'next-service', 'call-back', 'stop-use'];
const REASONS: readonly BarReason[] = ['breaks-later', 'breaks-sooner', 'does-not-fit', 'unsafe', 'other'];

/**
 * Reads a table as a spreadsheet puts it on the clipboard: the first line names the columns, cells are parted by tabs
 * (or by semicolons where there is no tab). Several positions, models or parts in one cell are parted by commas. Days
 * are YYYY-MM-DD, both included.
 */
export function readPastedRules(text: string): PastedRules {
  const rows = text
    .split(/\r?\n/)
    .filter((row) => row.trim() !== '')
    .map(cellsOf);
  const [head, ...body] = rows;
  if (!head || body.length === 0)
    return { ok: false, problems: ['Paste a line of headings and at least one line under it.'] };
  const columns = head.map((heading) => HEADINGS[heading.toLowerCase()] ?? null);
  const unknown = head.filter((_, index) => columns[index] === null);
  if (unknown.length > 0) {
    return {
      ok: false,
      problems: unknown.map((heading) => `No column is called “${heading}”; use ${COLUMNS.join(', ')}.`),
    };
  }
  const read = body.map((cells, index) => readRow(columns as Column[], cells, index + 2));
  const problems = read.flatMap((row) => row.problems);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, rules: read.map(({ rule }) => rule) };
}

function cellsOf(row: string): string[] {
  return row.split(row.includes('\t') ? '\t' : ';').map((cell) => cell.trim());
}

function readRow(columns: readonly Column[], cells: readonly string[], line: number) {
  const cell = (name: Column): string => cells[columns.indexOf(name)] ?? '';
  const problems: string[] = [];
  const oneOf = <T extends string>(name: Column, choices: readonly T[], fallback: T): T => {
    const found = choices.find((choice) => choice === cell(name).toLowerCase().replaceAll(' ', '-'));
    if (cell(name) !== '' && !found)
      problems.push(`Line ${line}: “${cell(name)}” is no ${name}; use ${choices.join(', ')}.`);
    return found ?? fallback;
  };
  for (const name of ['first', 'last'] as const) {
    if (cell(name) !== '' && parseDay(cell(name)) === null) {
      problems.push(`Line ${line}: “${cell(name)}” is no day; write it as 2017-03-14.`);
    }
  }
  if (cell('position') === '') problems.push(`Line ${line} names no position.`);
  const reason = oneOf('reason', REASONS, 'other');
  const rule: Omit<TypedRule, 'key' | 'line'> = {
    ...EMPTY_RULE,
    models: listed(cell('model')),
    positions: listed(cell('position')),
    builtFirst: cell('first'),
    builtLast: cell('last'),
    required: cell('required'),
    allowed: cell('allowed'),
    barred: listed(cell('barred')).map((part) => ({ part, reason, note: '', voidsWarranty: false })),
    action: oneOf('action', ACTIONS, 'call-back'),
  };
  return { rule, problems };
}
