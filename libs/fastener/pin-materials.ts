import type { GradeRow } from './grade-table';

const BARS = 'SAE Handbook 1986 p. 2.15, as reprinted in Shigley, Mechanical Engineering Design, table A-20';

function material(
  grade: string,
  yieldMpa: number,
  tensile: number,
  source: string,
  basis: GradeRow['basis'],
): GradeRow {
  return {
    system: 'pin material',
    grade,
    strengthUnit: 'MPa',
    sizeUnit: 'mm',
    sizeAbove: 0,
    sizeUpTo: 50,
    proof: null,
    yield: yieldMpa,
    tensile,
    mark: { kind: 'none' },
    markRequired: false,
    basis,
    source,
  };
}

/**
 * What plain, grooved and clevis pins are turned from. The bar steels are estimated minimums for 18 to 32 mm bar;
 * thinner drawn bar is slightly stronger. Pins carry no head mark, so a material is known from paper only.
 */
export const PIN_MATERIALS: readonly GradeRow[] = [
  material('1010 cold drawn', 300, 370, BARS, 'minimum'),
  material('1018 hot rolled', 220, 400, BARS, 'minimum'),
  material('1018 cold drawn', 370, 440, BARS, 'minimum'),
  material('1020 cold drawn', 390, 470, BARS, 'minimum'),
  material('1035 cold drawn', 460, 550, BARS, 'minimum'),
  material('1045 hot rolled', 310, 570, BARS, 'minimum'),
  material('1045 cold drawn', 530, 630, BARS, 'minimum'),
  material('304 annealed', 205, 515, 'ASTM A240, minimum', 'minimum'),
  material('6061-T6', 276, 310, 'Callister, Fundamentals of Materials Science and Engineering, table B.4', 'typical'),
];
