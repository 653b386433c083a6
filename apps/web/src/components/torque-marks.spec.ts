import { describe, expect, it } from '@jest/globals';
import type { StrengthView } from '../../../../libs/contracts';
import { torqueInWords, torqueMarks } from './torque-marks';

const strength: StrengthView = {
  fitted: { low: 180, high: 640 },
  required: { low: 304, high: 304 },
  rated: 480,
  class: 'cannot-tell',
  ratio: { low: 0.59, high: 2.1 },
  threshold: { soonerBelow: 0.85, laterAbove: 1.15 },
  severity: 'not-told',
  signal: 'WARNING',
  sentences: ['Cannot be told.'],
  caution: '',
};

describe('the torque picture', () => {
  it('is told with the same facts to who does not see it', () => {
    expect(torqueInWords(torqueMarks(strength), 'N·m')).toBe(
      'Required part lets go at 304 N·m (224 lbf·ft). Fitted part lets go at 180 to 640 N·m (133 to 472 lbf·ft). ' +
        'Drive line is rated for 480 N·m (354 lbf·ft).',
    );
  });

  it('draws only what is known, and says that the rating is not', () => {
    const marks = torqueMarks({ ...strength, rated: null });
    expect(marks.map(({ kind }) => kind)).toEqual(['required', 'fitted']);
    expect(torqueInWords(marks, 'lbf·ft')).toContain("The drive line's rating is not known.");
    expect(torqueMarks({ ...strength, rated: null, fitted: null, required: null })).toEqual([]);
  });
});
