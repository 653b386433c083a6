import type { HeadMarks } from './fastener-spec';
import type { GradeRow } from './grade-table';

const SOURCE = 'SAE J429, table 1';
/** A finished shank may be this much under its nominal size, in inches, and still be that size (from memory). */
const UNDER_NOMINAL = 0.013;
const QUARTER = 0.25 - UNDER_NOMINAL;

const none: HeadMarks = { kind: 'none' };
const lines = (count: number): HeadMarks => ({ kind: 'radial-lines', count });

type Sizes = [above: number, upTo: number];
type Strengths = [proof: number, yieldAt: number, tensile: number];

function row(
  grade: string,
  [sizeAbove, sizeUpTo]: Sizes,
  [proof, yieldAt, tensile]: Strengths,
  mark: HeadMarks,
): GradeRow {
  const strength = { strengthUnit: 'ksi', proof, yield: yieldAt, tensile, basis: 'minimum' } as const;
  const markRequired = mark.kind !== 'none';
  return {
    system: 'SAE J429',
    grade,
    sizeUnit: 'in',
    sizeAbove,
    sizeUpTo,
    ...strength,
    mark,
    markRequired,
    source: SOURCE,
  };
}

/**
 * SAE J429, minimum values in ksi. A grade 2 bolt longer than 6 in falls to grade 1 values. The marks of 5.2 and
 * 8.2 are set out differently round the head (from memory), which a worn head does not show.
 */
export const SAE_J429: readonly GradeRow[] = [
  row('1', [QUARTER, 1.5], [33, 36, 60], none),
  { ...row('2', [QUARTER, 0.75], [55, 57, 74], none), lengthUpTo: 6 },
  { ...row('2', [QUARTER, 0.75], [33, 36, 60], none), lengthAbove: 6 },
  row('2', [0.75, 1.5], [33, 36, 60], none),
  row('5', [QUARTER, 1], [85, 92, 120], lines(3)),
  row('5', [1, 1.5], [74, 81, 105], lines(3)),
  row('5.2', [QUARTER, 1], [85, 92, 120], lines(3)),
  row('8', [QUARTER, 1.5], [120, 130, 150], lines(6)),
  row('8.2', [QUARTER, 1], [120, 130, 150], lines(6)),
];

/** ASTM A307 grade A, minimum tensile in ksi; the standard names no yield. Its stamp is often left off imports. */
export const ASTM_A307: readonly GradeRow[] = [
  {
    system: 'ASTM A307',
    grade: 'A',
    strengthUnit: 'ksi',
    sizeUnit: 'in',
    sizeAbove: QUARTER,
    sizeUpTo: 4,
    proof: null,
    yield: null,
    tensile: 60,
    mark: { kind: 'stamp', text: '307A' },
    markRequired: false,
    basis: 'minimum',
    source: 'ASTM A307, grade A',
  },
];
