import type { SearchHits } from '../../../../../libs/contracts';

/**
 * The id of the one ticket whose number was meant: the number just as it is printed, as a scanner gives it, or its
 * digits alone where nothing else was found by them. Null when it is for a person to choose.
 */
export function onlyByNumber(text: string, hits: SearchHits): number | null {
  const named = hits.filter(({ matched }) => matched === 'number');
  const [only, ...more] = named;
  if (!only || more.length > 0) return null;
  const printed = only.number.toUpperCase() === text.trim().toUpperCase();
  return printed || hits.length === 1 ? only.id : null;
}
