import type { Grade, GradeRef, GradeSystem, HeadMarks } from './fastener-spec';
import type { GradeRow } from './grade-table';
import { GRADE_ROWS } from './grade-strength';
import { type Outcome, problem } from './problem';

/** Bolts and screws; pins of plain stock carry no head marks and are looked for only when asked. */
const HEADED: readonly GradeSystem[] = ['SAE J429', 'ISO 898-1', 'ASTM A307'];

/**
 * The grades a head can be of. Always a set, also when one is left: the same mark has been seen on parts of
 * another strength, and no mark at all means any of the grades that may go unmarked, never grade 2 alone.
 * Refused: a mark no table has.
 */
export function gradesForMarks(marks: HeadMarks, systems: readonly GradeSystem[] = HEADED): Outcome<Grade> {
  const rows = GRADE_ROWS.filter((row) => systems.includes(row.system) && mayShow(row, marks));
  const candidates = [...new Map(rows.map((row) => [`${row.system} ${row.grade}`, refOf(row)])).values()];
  if (candidates.length > 0) return { ok: true, value: { kind: 'one-of', candidates } };
  const accepted = 'a mark the tables know: none, 3 or 6 radial lines, 307A, or a class such as 8.8';
  return { ok: false, problems: [problem('unknown-grade', 'headMarks', sayMarks(marks), accepted)] };
}

/** True where a part of this row can have a head that looks like this. */
function mayShow(row: GradeRow, seen: HeadMarks): boolean {
  if (seen.kind === 'none') return row.mark.kind === 'none' || !row.markRequired;
  return sameMarks(row.mark, seen);
}

function refOf(row: GradeRow): GradeRef {
  return { system: row.system, grade: row.grade };
}

/** True where two heads look alike; a stamp is compared without blanks and case. */
export function sameMarks(one: HeadMarks, other: HeadMarks): boolean {
  return sayMarks(one) === sayMarks(other);
}

/** Head marks in words: `no head mark`, `3 radial lines`, `stamp 8.8`. */
export function sayMarks(marks: HeadMarks): string {
  if (marks.kind === 'none') return 'no head mark';
  if (marks.kind === 'radial-lines') return `${marks.count} radial line${marks.count === 1 ? '' : 's'}`;
  return `stamp ${marks.text.replace(/\s+/g, '').toUpperCase()}`;
}
