import type { Marks } from '../../../../../libs/contracts';
import { readLength } from './marks-words';

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
  return {
    head: first?.headMarks ?? '',
    diameter: first?.diameterMm?.toString() ?? '',
    length: first?.lengthMm?.toString() ?? '',
    groove: first === null || first.grooved === null ? '' : first.grooved ? 'yes' : 'no',
    finish: first?.finish ?? '',
  };
}

/** True for a text that is filled in and no length. */
export function isBadLength(text: string): boolean {
  return text.trim() !== '' && readLength(text) === null;
}

/** The marks as they go over the wire; null while a length cannot be read. */
export function marksFrom(typed: MarksTyped): Marks | null {
  if (isBadLength(typed.diameter) || isBadLength(typed.length)) return null;
  return {
    headMarks: typed.head.trim() || null,
    diameterMm: readLength(typed.diameter),
    lengthMm: readLength(typed.length),
    grooved: typed.groove === '' ? null : typed.groove === 'yes',
    finish: typed.finish.trim() || null,
  };
}
