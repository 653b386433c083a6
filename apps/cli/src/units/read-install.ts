import type { Day } from '../../../../libs/day';
import type { PartQuestion } from '../../../../libs/fit-rules';
import type { PartKey } from '../../../../libs/part-number';
import type { Book } from '../files/read-book';
import { someOf, type Problems } from './problem';
import type { PartReader } from './read-part';
import { readUnit, type GivenUnit } from './read-unit';
import { dayOfValue, textOfValue, type Values } from './read-values';

/** One part in one place of one unit, as a row gives it. */
export interface Install {
  readonly unit: GivenUnit;
  readonly position: string;
  readonly parts: readonly PartKey[];
  readonly fittedOn: Day | null;
}

/** Reads an install from a row or from options; null when something is wrong, with every problem noted. */
export function readInstall(
  values: Values,
  { book, parts: reader, today }: { book: Book; parts: PartReader; today: Day },
  problems: Problems,
): Install | null {
  const before = problems.all.length;
  const unit = readUnit(values, book, today, problems);
  const line = unit?.line ?? textOfValue(values, 'line', problems) ?? '';
  const position = readPosition(values, line, book, problems);
  const parts = readParts(values, line, reader, problems);
  const fittedOn = dayOfValue(values, 'fitted_on', problems);
  if (unit === null || position === null || problems.all.length > before) return null;
  return { unit, position, parts, fittedOn };
}

/** The question that the rules are asked. */
export function questionOf({ unit, position, parts, fittedOn }: Install): PartQuestion {
  return { unit: unit.facts(), position, parts, fittedOn };
}

/** A position of the line; in a rulebook that lists no lines any name will do. */
export function readPosition(values: Values, line: string, book: Book, problems: Problems): string | null {
  const position = textOfValue(values, 'position', problems);
  const positions = book.lines.get(line)?.positions;
  if (position !== null && (!positions || positions.has(position))) return position;
  const names = positions ? someOf(positions.keys()) : '';
  return position === null
    ? problems.add('position', `nothing stands here; give the position${names && `, one of ${names}`}.`)
    : problems.add('position', `"${position}" is no position of ${line}; it has ${names}.`);
}

/** One part, or every part it can be, joined by `|` (in JSON also a list); blank when it cannot be told. */
function readParts(values: Values, line: string, reader: PartReader, problems: Problems): readonly PartKey[] {
  const list: readonly unknown[] = Array.isArray(values.parts)
    ? values.parts
    : (textOfValue(values, 'part', problems)?.split('|') ?? []);
  return list.flatMap((one) => {
    const text = typeof one === 'string' ? one.trim() : '';
    if (text === '') return [];
    const reading = reader.read(text, line);
    if (reading.ok) return [reading.key];
    problems.add('part', reading.sentence);
    return [];
  });
}
