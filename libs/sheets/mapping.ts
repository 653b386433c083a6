import type { Kind } from './column';

/** Which column of the file (from 0) holds which field; null for a field that no column holds. */
export type Mapping = Readonly<Record<string, number | null>>;

/** Letters and digits of a heading in lower case: how headings are compared. */
export function headingKey(heading: string): string {
  return heading
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z0-9#]+/g, '');
}

/**
 * Proposes the columns of a file for a kind: what the shop chose for the same headings before, then the kind's own
 * heading, then the other headings it is known by. No column of the file is proposed for two fields.
 */
export function proposeMapping(
  kind: Kind,
  headings: readonly string[],
  remembered: Readonly<Record<string, string | null>> = {},
): Mapping {
  const keys = headings.map(headingKey);
  const taken = new Set<number>();
  const mapping: Record<string, number | null> = {};
  const take = (field: string, at: number): void => {
    if (field in mapping || at < 0 || taken.has(at)) return;
    taken.add(at);
    mapping[field] = at;
  };
  for (const [field, heading] of Object.entries(remembered)) {
    if (!(field in kind.columns)) continue;
    if (heading === null) continue;
    take(field, keys.indexOf(headingKey(heading)));
  }
  // A column the shop once left out on purpose stays out, unless its heading is the kind's own.
  const fields = Object.entries(kind.columns);
  for (const [field, { heading }] of fields) take(field, keys.indexOf(headingKey(heading)));
  for (const [field, { also }] of fields) {
    if (remembered[field] === null) continue;
    for (const one of also) take(field, keys.indexOf(headingKey(one)));
  }
  return Object.fromEntries(fields.map(([field]) => [field, mapping[field] ?? null]));
}

/** The headings behind a mapping, to be remembered for the next file. */
export function headingsOf(mapping: Mapping, headings: readonly string[]): Record<string, string | null> {
  return Object.fromEntries(
    Object.entries(mapping).map(([field, at]) => [field, at === null ? null : (headings[at] ?? null)]),
  );
}

/** What is wrong with a choice of columns, one sentence each. */
export function mappingProblems(kind: Kind, mapping: Mapping, columns: number): readonly string[] {
  const problems: string[] = [];
  const used = new Map<number, string>();
  for (const [field, at] of Object.entries(mapping)) {
    const known = kind.columns[field];
    if (!known) problems.push(`There is no field '${field}' in ${kind.title.toLowerCase()}.`);
    else if (at !== null && (!Number.isInteger(at) || at < 0 || at >= columns))
      problems.push(`${known.heading}: the file has no column ${at + 1}; it has ${columns}.`);
    else if (at !== null && used.has(at))
      problems.push(`Column ${at + 1} is chosen for ${used.get(at)} and for ${known.heading}; choose it once.`);
    if (at !== null && known) used.set(at, known.heading);
  }
  for (const [field, { heading, required }] of Object.entries(kind.columns))
    if (required && (mapping[field] ?? null) === null) problems.push(`Choose the column that holds ${heading}.`);
  return problems;
}
