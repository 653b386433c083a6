import type { GradeRow } from './grade-table';

type Sizes = [above: number, upTo: number];
type Strengths = [proof: number, yieldAt: number, tensile: number];

/** The class mark must be on the head for these; the others may be blank. */
const MARK_REQUIRED = ['4.6', '5.6', '8.8', '9.8', '10.9', '12.9'];

function row(grade: string, [sizeAbove, sizeUpTo]: Sizes, [proof, yieldAt, tensile]: Strengths): GradeRow {
  return {
    system: 'ISO 898-1',
    grade,
    strengthUnit: 'MPa',
    sizeUnit: 'mm',
    sizeAbove,
    sizeUpTo,
    proof,
    yield: yieldAt,
    tensile,
    mark: { kind: 'stamp', text: grade },
    markRequired: MARK_REQUIRED.includes(grade),
    basis: 'minimum',
    source: 'ISO 898-1, mechanical and physical properties',
  };
}

const ALL: Sizes = [1.5, 39];

/** ISO 898-1, minimum values in MPa (yield is Rp0,2 or Rpf). Class 9.8 stops at M16 (from memory). */
export const ISO_898_1: readonly GradeRow[] = [
  row('4.6', ALL, [225, 240, 400]),
  row('4.8', ALL, [310, 340, 420]),
  row('5.6', ALL, [280, 300, 500]),
  row('5.8', ALL, [380, 420, 520]),
  row('6.8', ALL, [440, 480, 600]),
  row('8.8', [1.5, 16], [580, 640, 800]),
  row('8.8', [16, 39], [600, 660, 830]),
  row('9.8', [1.5, 16], [650, 720, 900]),
  row('10.9', ALL, [830, 940, 1040]),
  row('12.9', ALL, [970, 1100, 1220]),
];

/** Nominal tensile and yield of a class X.Y: 100·X and 10·X·Y MPa; null for text that is no class. */
export function nominalOfClass(name: string): { tensileMpa: number; yieldMpa: number } | null {
  const match = /^(\d{1,2})\.(\d)$/.exec(name);
  if (!match) return null;
  const [first, second] = [Number(match[1]), Number(match[2])];
  return { tensileMpa: 100 * first, yieldMpa: 10 * first * second };
}
