import type { z } from 'zod';

type Issue = z.core.$ZodRawIssue;

/**
 * What a schema accepts where it has no words of its own, as the end of a sentence about a field: `must be a list, not a
 * text`. The value itself is left to who shows it, for it may be a password; only its sort is named.
 */
export function shapeWords(issue: Issue): string {
  const accepted = acceptedBy(issue);
  if (issue.input === undefined && SAYS_WHAT_IT_IS.has(issue.code)) return `must be given, and be ${accepted}`;
  switch (issue.code) {
    case 'invalid_type':
      return `must be ${accepted}${notWhatItIs(issue)}`;
    case 'invalid_union':
      return unionWords(issue);
    case 'unrecognized_keys':
      return strangeFields(issue);
    case 'invalid_key':
      return 'must have no key of this sort';
    case 'invalid_element':
      return 'must have no entry of this sort';
    case 'too_big':
    case 'too_small':
      return sizeWords(issue);
    case 'not_multiple_of':
      return `must be a multiple of ${issue.divisor}`;
    case 'custom':
      return 'must be otherwise';
    default:
      return `must be ${accepted}`;
  }
}

const SAYS_WHAT_IT_IS: ReadonlySet<string> = new Set(['invalid_type', 'invalid_value', 'invalid_union']);

function acceptedBy(issue: Issue): string {
  if (issue.code === 'invalid_type') return sortName(isWhole(issue) ? 'int' : issue.expected);
  if (issue.code === 'invalid_value') return oneOf(issue.values.map(shown));
  if (issue.code === 'invalid_format') return formatName(issue);
  if (issue.code === 'invalid_union' && issue.discriminator === undefined) return sortsOfUnion(issue);
  return 'what is accepted here';
}

const SORTS: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object with fields',
  record: 'an object with fields',
  null: 'null',
  nan: 'no number',
  date: 'a date',
};
/** A schema of whole numbers asks for a number first. */
function isWhole({ inst }: Issue): boolean {
  const def = (inst as z.core.$ZodType | undefined)?._zod.def as { format?: string } | undefined;
  return def?.format === 'safeint';
}

const sortName = (sort: string): string => SORTS[sort] ?? `of the sort ${sort}`;

/** What stands there, by its sort alone; nothing where that would only say the same again. */
function notWhatItIs({ input, expected }: Issue): string {
  if (expected === 'int' && typeof input === 'number') return '';
  if (typeof input === 'number' && Number.isNaN(input)) return ', not a number that is none';
  const sort = input === null ? 'null' : Array.isArray(input) ? 'array' : typeof input;
  return `, not ${sortName(sort)}`;
}

const FORMATS: Readonly<Record<string, string>> = {
  email: 'an e-mail address',
  url: 'a web address, such as https://example.org/',
  uuid: 'a UUID',
  datetime: 'an instant, such as 2026-03-01T09:30:00.000Z',
  date: 'a day, such as 2026-03-01',
  time: 'a time of day, such as 09:30',
};

function formatName(issue: Issue): string {
  const { format, pattern, prefix, suffix, includes } = issue as Record<string, unknown>;
  if (format === 'starts_with') return `a text that begins with ${shown(prefix)}`;
  if (format === 'ends_with') return `a text that ends with ${shown(suffix)}`;
  if (format === 'includes') return `a text that holds ${shown(includes)}`;
  return FORMATS[String(format)] ?? `a text of the pattern ${String(pattern ?? format)}`;
}

const COUNTED: Readonly<Record<string, readonly [string, string]>> = {
  string: ['character', 'characters'],
  array: ['entry', 'entries'],
  set: ['entry', 'entries'],
  map: ['entry', 'entries'],
  file: ['byte', 'bytes'],
};

function sizeWords(issue: Issue): string {
  const isMost = issue.code === 'too_big';
  const limit = Number(isMost ? issue.maximum : issue.minimum);
  const counted = COUNTED[String(issue.origin)];
  if (!counted) {
    const side = issue.inclusive === false ? (isMost ? 'less than' : 'more than') : isMost ? 'at most' : 'at least';
    return `must be ${side} ${limit}`;
  }
  if (!isMost && limit === 1) return issue.origin === 'string' ? 'must not be empty' : 'must have at least one entry';
  const side = issue.exact ? 'exactly' : isMost ? 'at most' : 'at least';
  return `must have ${side} ${limit} ${counted[limit === 1 ? 0 : 1]}`;
}

function strangeFields(issue: Issue): string {
  const strange = (issue as { keys: readonly string[] }).keys.slice(0, 5).map(shown).join(', ');
  const fields = fieldsOf(issue.inst);
  const known = fields.length === 0 ? '' : `; accepted ${fields.length === 1 ? 'is' : 'are'} ${fields.join(', ')}`;
  return `must have no field ${strange}${known}`;
}

function fieldsOf(schema: unknown): readonly string[] {
  const def = (schema as z.core.$ZodType | undefined)?._zod.def as { shape?: object } | undefined;
  return Object.keys(def?.shape ?? {});
}

/** A union that is told by one field says which values that takes; any other, what its closest branch lacks. */
function unionWords(issue: Issue): string {
  const discriminator = (issue as { discriminator?: string }).discriminator;
  if (discriminator !== undefined) {
    const values = (issue.inst as z.core.$ZodType | undefined)?._zod.propValues?.[discriminator];
    return `must be ${values ? oneOf([...values].map(shown)) : 'one of the kinds there are'}`;
  }
  const branches = branchesOf(issue);
  const inside = branches.filter(([first]) => first !== undefined && first.path.length > 0);
  const [closest] = inside.sort((a, b) => a.length - b.length)[0] ?? [];
  if (closest) return `${closest.path.map(String).join('.')} ${closest.message}`;
  return `must be ${sortsOfUnion(issue)}`;
}

const branchesOf = (issue: Issue) => [...(issue as { errors: readonly (readonly z.core.$ZodIssue[])[] }).errors];

/** What the branches ask for, each by its first words. */
function sortsOfUnion(issue: Issue): string {
  const asked = branchesOf(issue).flatMap(([first]) =>
    first === undefined ? [] : [first.message.replace(/^must be (given, and be )?/, '').replace(/, not .*$/, '')],
  );
  return oneOf([...new Set(asked)], 'or');
}

function oneOf(all: readonly string[], joined: 'of' | 'or' = 'of'): string {
  if (all.length === 1) return all[0]!;
  return joined === 'or' ? all.join(', or ') : `one of ${all.join(', ')}`;
}

const shown = (value: unknown): string => (typeof value === 'string' ? `"${value}"` : String(value));
