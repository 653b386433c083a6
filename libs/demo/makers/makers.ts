import type { NumberRules } from '../../part-number';

/** A maker and how it writes part numbers. All three are invented. */
export interface DemoMaker {
  readonly code: string;
  readonly name: string;
  readonly numberRules: NumberRules;
}

export const makers: readonly DemoMaker[] = [
  {
    code: 'BRAKEN',
    name: 'Brakenholt Implement Works',
    numberRules: {
      makerCode: 'BRAKEN',
      noise: '-',
      packMarks: [{ before: '/P', after: '' }],
      trailingLetterIsRevision: true,
    },
  },
  {
    code: 'QUILMO',
    name: 'Quilmoor Garden Machines',
    numberRules: {
      makerCode: 'QUILMO',
      noise: '-.',
      packMarks: [{ before: '-', after: 'PK' }],
      trailingLetterIsRevision: true,
    },
  },
  {
    code: 'TARNVE',
    name: 'Tarnvelde Landtechnik',
    numberRules: {
      makerCode: 'TARNVE',
      noise: '.',
      packMarks: [{ before: '*', after: '' }],
      trailingLetterIsRevision: false,
    },
  },
];
