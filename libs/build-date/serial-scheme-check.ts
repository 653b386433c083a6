import type { SerialField } from './serial-field';

type Kind = SerialField['kind'];
const YEARS: readonly Kind[] = ['year-digit', 'year-two-digits', 'year-four-digits', 'year-letter'];
const PARTS_OF_YEAR: readonly Kind[] = ['month-number', 'month-letter', 'iso-week', 'day-of-year'];
const MONTHS: readonly Kind[] = ['month-number', 'month-letter'];
const ONCE: readonly Kind[] = ['day-of-month', 'sequence'];

/** What makes a scheme unreadable or self-contradicting, a sentence each; empty for a good one. */
export function problemsOfScheme(scheme: {
  fields: readonly SerialField[];
  validFrom: string | null;
  validTo: string | null;
}): string[] {
  const count = (kinds: readonly Kind[]) => scheme.fields.filter((field) => kinds.includes(field.kind)).length;
  const problems: string[] = [];
  if (count(YEARS) > 1) problems.push('a scheme has at most one year field');
  if (count(PARTS_OF_YEAR) > 1) problems.push('a scheme has at most one of month, ISO week and day of year');
  for (const kind of ONCE) if (count([kind]) > 1) problems.push(`a scheme has at most one ${kind} field`);
  if (count(['day-of-month']) > 0 && count(MONTHS) === 0) problems.push('a day of the month needs a month field');
  if (scheme.validFrom !== null && scheme.validTo !== null && scheme.validFrom >= scheme.validTo)
    problems.push(`validTo ${scheme.validTo} must be later than validFrom ${scheme.validFrom}`);
  scheme.fields.forEach((field, at) => problems.push(...problemsOfField(field, scheme.fields[at + 1])));
  return problems;
}

function problemsOfField(field: SerialField, next: SerialField | undefined): string[] {
  if (field.kind === 'sequence') return problemsOfSequence(field, next);
  if ('letters' in field && new Set(field.letters).size !== field.letters.length)
    return [`letters ${field.letters} hold one twice; each may stand once`];
  if (field.kind === 'plant') {
    const wrong = field.codes.find(({ code }) => !/^[A-Z0-9]+$/.test(code) || code.length !== field.length);
    if (wrong) return [`plant code ${JSON.stringify(wrong.code)} must be ${field.length} capitals or digits`];
  }
  return [];
}

/** A sequence of varying length can only be told from what follows when that is no digit. */
function problemsOfSequence(field: SerialField & { kind: 'sequence' }, next: SerialField | undefined): string[] {
  if (field.maxLength === undefined || field.maxLength === field.length) return [];
  if (field.maxLength < field.length) return [`sequence maxLength ${field.maxLength} is below length ${field.length}`];
  const ends = next === undefined || next.kind === 'separator' || (next.kind === 'literal' && /^[A-Z]/.test(next.text));
  return ends ? [] : ['a sequence of varying length must be followed by a separator, a fixed letter or the end'];
}
