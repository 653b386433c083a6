/**
 * Numbers, or plain words, as PostgreSQL writes an array. As one text they cost the client a fraction of what a list
 * does, of which it takes every element into its hands. To be written with one cast, `::int[]`: by way of `::text` the
 * database knows the values only when it runs, and compares each row with one after the other.
 */
export function arrayText(values: readonly (number | string | null)[]): string {
  return `{${values.map((value) => value ?? 'NULL').join(',')}}`;
}

/** Reads what PostgreSQL wrote of an array of whole numbers; the text of no row at all is null. */
export function numbersOf(text: string | null): (number | null)[] {
  return wordsOf(text).map((word) => (word === null ? null : Number(word)));
}

/** The same of plain words, such as verdicts. */
export function wordsOf(text: string | null): (string | null)[] {
  if (text === null || text === '{}') return [];
  return text
    .slice(1, -1)
    .split(',')
    .map((word) => (word === 'NULL' ? null : word));
}
