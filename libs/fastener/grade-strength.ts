import type { FastenerSpec, Grade, GradeRef } from './fastener-spec';
import type { GradeRow } from './grade-table';
import { ISO_898_1 } from './iso-898-1';
import { PIN_MATERIALS } from './pin-materials';
import { type FastenerProblem, type Outcome, problem } from './problem';
import { ASTM_A307, SAE_J429 } from './sae-j429';
import { mmFromInches, mpaFromKsi } from './units';

/** Every row the library knows, in the order of the standards. */
export const GRADE_ROWS: readonly GradeRow[] = [...SAE_J429, ...ISO_898_1, ...ASTM_A307, ...PIN_MATERIALS];

/** What a table says of one grade at one size, in MPa; null where the standard names no value. */
export interface GradeStrength extends GradeRef {
  proofMpa: number | null;
  yieldMpa: number | null;
  tensileMpa: number;
  basis: GradeRow['basis'];
  source: string;
}

type Size = Pick<FastenerSpec, 'diameterMm' | 'lengthMm'>;

/** The grades one fastener can be of: one, or the set. */
export function candidatesOf(grade: Grade): GradeRef[] {
  return grade.kind === 'known' ? [{ system: grade.system, grade: grade.grade }] : grade.candidates;
}

/**
 * What the table says of a grade at this size. Several rows when the length decides and is not known. Refused:
 * a grade the table does not have, a size it does not speak of.
 */
export function strengthOf(ref: GradeRef, size: Size, field: string): Outcome<GradeStrength[]> {
  const named = GRADE_ROWS.filter((row) => row.system === ref.system && row.grade === ref.grade);
  if (named.length === 0)
    return refuse('unknown-grade', field, ref.grade, `${gradeNames(ref.system)} of ${ref.system}`);
  const rows = named.filter((row) => speaksOf(row, size));
  if (rows.length > 0) return { ok: true, value: rows.map(inMpa) };
  const low = Math.min(...named.map((row) => toMm(row.sizeAbove, row)));
  const high = Math.max(...named.map((row) => toMm(row.sizeUpTo, row)));
  const words = `above ${low} up to ${high} mm, the sizes ${ref.system} grade ${ref.grade} speaks of`;
  return refuse('no-value-at-this-size', field.replace(/grade.*$/, 'diameterMm'), size.diameterMm, words);
}

/** The names a table has, each once. */
function gradeNames(system: GradeRef['system']): string {
  return [...new Set(GRADE_ROWS.filter((row) => row.system === system).map((row) => row.grade))].join(', ');
}

function refuse(code: FastenerProblem['code'], field: string, value: unknown, accepted: string): Outcome<never> {
  return { ok: false, problems: [problem(code, field, value, accepted)] };
}

/** Lengths turned from inches carry a rounding error far below this. */
const SAME_MM = 1e-4;

function speaksOf(row: GradeRow, { diameterMm, lengthMm }: Size): boolean {
  const within = (value: number, above: number, upTo: number): boolean =>
    value > above + SAME_MM && value <= upTo + SAME_MM;
  if (!within(diameterMm, toMm(row.sizeAbove, row), toMm(row.sizeUpTo, row))) return false;
  return lengthMm === null || within(lengthMm, toMm(row.lengthAbove ?? 0, row), toMm(row.lengthUpTo ?? Infinity, row));
}

function toMm(value: number, row: GradeRow): number {
  return row.sizeUnit === 'in' && Number.isFinite(value) ? mmFromInches(value) : value;
}

function inMpa(row: GradeRow): GradeStrength {
  const mpa = (value: number): number => (row.strengthUnit === 'ksi' ? mpaFromKsi(value) : value);
  return {
    system: row.system,
    grade: row.grade,
    proofMpa: row.proof === null ? null : mpa(row.proof),
    yieldMpa: row.yield === null ? null : mpa(row.yield),
    tensileMpa: mpa(row.tensile),
    basis: row.basis,
    source: row.source,
  };
}
