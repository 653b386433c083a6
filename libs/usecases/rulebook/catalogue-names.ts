import type { Naming } from '../../fit-rules';
import { splitPartKey } from '../../part-number';
import { jointKey, type CatalogueShapes } from '../ports/catalogue-store';

/** Lines and positions by their names, parts by the number their maker prints; by their keys where nobody named them. */
export function catalogueNames({ numbers, lines, positions }: CatalogueShapes): Required<Omit<Naming, 'rule'>> {
  return {
    line: (code) => lines.get(code) ?? code,
    part: (key) => numbers.get(key) ?? splitPartKey(key).canonical,
    position: (code, line) => positions.get(jointKey(line, code)) ?? code,
  };
}
