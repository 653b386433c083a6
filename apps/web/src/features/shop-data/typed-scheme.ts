import { SerialSchemeSchema, type SerialField, type SerialScheme } from '../../../../../libs/build-date';
import { formatDay, parseDay } from '../../../../../libs/day';
import { readShape } from '../../../../../libs/shape';

/** A scheme as it is typed: days as a person says them, the last day included; empty where it is not known. */
export interface TypedScheme {
  maker: string;
  name: string;
  lines: string[];
  firstDay: string;
  lastDay: string;
  fields: SerialField[];
  source: string;
}

export const NEW_SCHEME: TypedScheme = {
  maker: '',
  name: '',
  lines: [],
  firstDay: '',
  lastDay: '',
  fields: [{ kind: 'year-two-digits' }, { kind: 'month-number' }, { kind: 'sequence', length: 4 }],
  source: '',
};

const moved = (day: string, by: number): string | null => {
  const value = parseDay(day);
  return value === null ? null : formatDay(value + by);
};

/** A kept scheme for the form. */
export function typedFrom({ maker, name, lines, validFrom, validTo, fields, source }: SerialScheme): TypedScheme {
  const lastDay = validTo === null ? '' : (moved(validTo, -1) ?? '');
  return { maker, name, lines: [...lines], firstDay: validFrom ?? '', lastDay, fields: [...fields], source };
}

/** The wire form; what was not typed is left out, so that the library's own default stands. */
export function wireFrom({ firstDay, lastDay, source, name, ...rest }: TypedScheme): Omit<SerialScheme, 'id'> {
  const validTo = lastDay === '' ? null : moved(lastDay, 1);
  const wire = { ...rest, name: name.trim(), validFrom: firstDay || null, validTo };
  return (source.trim() === '' ? wire : { ...wire, source: source.trim() }) as Omit<SerialScheme, 'id'>;
}

/** The scheme when it can be read by, else why not, a sentence each. A name is not needed for trying. */
export function checked(typed: TypedScheme): { scheme: SerialScheme | null; problems: string[] } {
  const wire = wireFrom(typed);
  const named = { ...wire, id: 'on the page', maker: wire.maker || 'maker', name: wire.name || 'this scheme' };
  const read = readShape(SerialSchemeSchema, named);
  if (read.ok) return { scheme: read.value, problems: [] };
  return { scheme: null, problems: read.problems.map(({ words }) => words) };
}
