import type { Marks } from '../../../../../libs/contracts';
import { readWritten } from './marks-words';

/** What stands in the fields of the marks form; an empty text was not looked at. */
export interface MarksTyped {
  head: string;
  diameter: string;
  length: string;
  groove: '' | 'yes' | 'no';
  finish: string;
}

/** The fields as they begin: empty, or what was kept before. */
export function typedFrom(first: Marks | null): MarksTyped {
  const length = (mm: number | null | undefined) => (mm === null || mm === undefined ? '' : `${mm} mm`);
  return {
    head: first?.headMarks ?? '',
    diameter: length(first?.diameterMm),
    length: length(first?.lengthMm),
    groove: first === null || first.grooved === null ? '' : first.grooved ? 'yes' : 'no',
    finish: first?.finish ?? '',
  };
}

/** What is wrong with a length that is filled in, in one sentence; null when nothing is. */
export function lengthProblem(text: string, field: 'diameter' | 'length'): string | null {
  if (text.trim() === '') return null;
  const read = readWritten(text, field);
  return read.ok ? null : read.problems[0]!.sentence;
}

/** The marks as they go over the wire; null while a length cannot be read. */
export function marksFrom(typed: MarksTyped): Marks | null {
  if (lengthProblem(typed.diameter, 'diameter') || lengthProblem(typed.length, 'length')) return null;
  return {
    headMarks: typed.head.trim() || null,
    diameterMm: lengthOf(typed.diameter),
    lengthMm: lengthOf(typed.length),
    grooved: typed.groove === '' ? null : typed.groove === 'yes',
    finish: typed.finish.trim() || null,
  };
}

/** True once anything at all was looked at. */
export function hasMarks(marks: Marks | null): marks is Marks {
  return marks !== null && Object.values(marks).some((value) => value !== null);
}

function lengthOf(text: string): number | null {
  const read = readWritten(text, 'length');
  return read.ok ? read.value : null;
}
