import { daySet, parseDay, spanOfPartialDate, type Day, type DaySet, type DaySpan } from '../../../../libs/day';
import type { Problems } from './problem';

/** Values of a row or of options, by column name. */
export type Values = Readonly<Record<string, unknown>>;

/** The text of a value; null when it is blank or not there. */
export function textOfValue(values: Values, field: string, problems: Problems): string | null {
  const value = values[field];
  if (value === undefined || value === null) return null;
  if (typeof value === 'string') return value.trim() === '' ? null : value.trim();
  if (typeof value === 'number') return String(value);
  return problems.add(field, `${JSON.stringify(value)} will not do: must be text.`);
}

/** A day written YYYY-MM-DD; null when it is blank. */
export function dayOfValue(values: Values, field: string, problems: Problems): Day | null {
  const text = textOfValue(values, field, problems);
  if (text === null) return null;
  return parseDay(text) ?? problems.add(field, `"${text}" is no day: write it as YYYY-MM-DD, such as 2017-03-14.`);
}

/**
 * The possible build dates that a row gives outright: `built_from` up to, not including, `built_to` (a blank one is
 * open), or `built` as dates of any precision joined by `|`. Null when nothing is given: then the evidence speaks.
 */
export function builtOfValues(values: Values, problems: Problems): DaySet | null {
  const from = dayOfValue(values, 'built_from', problems);
  const to = dayOfValue(values, 'built_to', problems);
  if (Array.isArray(values.built)) return daySet(values.built.flatMap((one) => spanOfObject(one, problems)));
  const text = textOfValue(values, 'built', problems);
  if (text !== null) return daySet(text.split('|').flatMap((one) => spanOfText(one.trim(), problems)));
  if (from === null && to === null) return null;
  return ordered({ from: from ?? -Infinity, to: to ?? Infinity }, 'built_to', problems);
}

function spanOfText(text: string, problems: Problems): DaySpan[] {
  const span = spanOfPartialDate(text);
  if (span) return [span];
  problems.add(
    'built',
    `"${text}" is no date: write a year (2017), a month (2017-03), a week (2017-W09) or a day (2017-03-14).`,
  );
  return [];
}

function spanOfObject(value: unknown, problems: Problems): readonly DaySpan[] {
  if (typeof value !== 'object' || value === null) {
    problems.add('built', `${JSON.stringify(value)} will not do: each span is an object with from and to.`);
    return [];
  }
  const from = dayOfValue(value as Values, 'from', problems);
  const to = dayOfValue(value as Values, 'to', problems);
  return ordered({ from: from ?? -Infinity, to: to ?? Infinity }, 'built', problems);
}

function ordered(span: DaySpan, field: string, problems: Problems): readonly DaySpan[] {
  if (span.from < span.to) return [span];
  problems.add(field, 'the span must end after it begins; its end is the first day that is not part of it.');
  return [];
}

const YES = ['yes', 'y', 'true', '1', 'fitted', 'with'];
const NO = ['no', 'n', 'false', '0', 'not fitted', 'without'];

/** Options as `heated-grips=yes|heavy-housing=no`, or as an object of true and false; one not named is not known. */
export function optionsOfValues(values: Values, problems: Problems): Record<string, boolean> {
  const given = values.options;
  if (typeof given === 'object' && given !== null && !Array.isArray(given)) return optionsOfObject(given, problems);
  const text = textOfValue(values, 'options', problems);
  const options: Record<string, boolean> = {};
  if (text === null) return options;
  for (const one of text.split('|')) {
    const [code = '', word = ''] = one.split('=').map((part) => part.trim());
    if (YES.includes(word.toLowerCase())) options[code] = true;
    else if (NO.includes(word.toLowerCase())) options[code] = false;
    else problems.add('options', `"${one.trim()}" will not do: write option=yes or option=no, joined by |.`);
  }
  return options;
}

function optionsOfObject(given: object, problems: Problems): Record<string, boolean> {
  const bad = Object.entries(given).find(([, fitted]) => typeof fitted !== 'boolean');
  if (bad) problems.add('options', `"${bad[0]}" is ${JSON.stringify(bad[1])}: an option is true or false.`);
  return bad ? {} : { ...(given as Record<string, boolean>) };
}
