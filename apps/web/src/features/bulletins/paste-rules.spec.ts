import { describe, expect, it } from '@jest/globals';
import { readPastedRules } from './paste-rules';

const HEAD = 'Position\tModel\tFrom\tUntil\tRequired\tAllowed\tBarred\tReason\tAction';

describe('a table pasted into the bulletin form', () => {
  it('becomes one rule a line, with several positions and parts in a cell', () => {
    const read = readPastedRules(
      `${HEAD}\nOUTER, INNER\tT1\t2017-03-03\t2019-12-31\tP-2\tP-3, P-4\tP-1\tbreaks later\tstop use\n`,
    );
    expect(read).toEqual({
      ok: true,
      rules: [
        expect.objectContaining({
          positions: ['OUTER', 'INNER'],
          models: ['T1'],
          builtFirst: '2017-03-03',
          builtLast: '2019-12-31',
          required: 'P-2',
          allowed: 'P-3, P-4',
          barred: [{ part: 'P-1', reason: 'breaks-later', note: '', voidsWarranty: false }],
          action: 'stop-use',
        }),
      ],
    });
  });

  it('takes columns in any order and parted by semicolons, and leaves the rest as usual', () => {
    const read = readPastedRules('Required;Position\nP-2;OUTER');
    expect(read).toMatchObject({ ok: true, rules: [{ positions: ['OUTER'], required: 'P-2', action: 'call-back' }] });
  });

  it('names a heading it does not know', () => {
    expect(readPastedRules('Position\tColour\nOUTER\tred')).toEqual({
      ok: false,
      problems: [
        'No column is called “Colour”; use position, model, first, last, required, allowed, barred, reason, action.',
      ],
    });
  });

  it('names the line and the cell that cannot be read, for every such cell', () => {
    const read = readPastedRules('Position\tFrom\tAction\nOUTER\t3/3/17\tshout\n\t2017-02-30\t');
    expect(read).toEqual({
      ok: false,
      problems: [
        'Line 2: “3/3/17” is no day; write it as 2017-03-14.',
        'Line 2: “shout” is no action; use nothing, next-service, call-back, stop-use.',
        'Line 3: “2017-02-30” is no day; write it as 2017-03-14.',
        'Line 3 names no position.',
      ],
    });
  });

  it('asks for more than headings', () => {
    expect(readPastedRules(HEAD)).toMatchObject({ ok: false });
  });
});
