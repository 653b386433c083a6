import type { PartRef } from '../../contracts';
import type { PartRow } from '../ports/index';

/** A part by its key; one the catalogue does not know is named by what stands in the key. */
export function partRefOf(key: string, parts: ReadonlyMap<string, PartRow>): PartRef {
  const row = parts.get(key);
  if (row) return { key, number: row.number, name: row.name };
  return { key, number: key.slice(key.indexOf('/') + 1), name: 'Not in the catalogue' };
}
