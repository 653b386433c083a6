import type { GradeSystem, HeadMarks } from './fastener-spec';

/**
 * One row of a published table. Strengths stand in the unit the table prints; sizes are the diameters the row
 * speaks of, `above` exclusive and `upTo` inclusive, in the table's own unit.
 */
export interface GradeRow {
  system: GradeSystem;
  grade: string;
  strengthUnit: 'ksi' | 'MPa';
  sizeUnit: 'in' | 'mm';
  sizeAbove: number;
  sizeUpTo: number;
  /** Lengths under head the row speaks of, `above` exclusive and `upTo` inclusive; left out where all. */
  lengthAbove?: number;
  lengthUpTo?: number;
  proof: number | null;
  yield: number | null;
  tensile: number;
  /** What the head shows, where it shows anything. */
  mark: HeadMarks;
  /** False where the head may be left blank. */
  markRequired: boolean;
  basis: 'minimum' | 'typical';
  source: string;
}
