import { day } from '../day';
import { explain } from './explain';
import { createJudge } from './judge';
import { recordQuestion, replay, verdictRecord } from './replay';
import { bar, bookOf, LATER, paper, rule, unit } from './testing/made-rules';
import { Draw, stream } from './testing/random-book';

describe('a verdict kept for later', () => {
  it('gives the same judgement and the same words from what was stored, and nothing else', () => {
    for (let seed = 1; seed <= 150; seed++) {
      const draw = new Draw(stream(seed * 31));
      const book = draw.rulebook();
      const question = draw.question();
      const at = { today: 12, now: 3, endOfDay: (on: number) => on % 6 };
      const then = createJudge(book, at).judge(question);
      const stored: unknown = JSON.parse(JSON.stringify(recordQuestion(book, question, at)));
      const later = replay(verdictRecord.parse(stored));
      expect(later.judgement).toEqual(then);
      expect(explain(later.judgement, later.rulebook)).toEqual(explain(then, book));
    }
  });

  it('keeps only what bears on the question', () => {
    const list = paper('parts-list');
    const other = paper('owners-manual');
    const known = { from: -Infinity, to: Infinity };
    const book = bookOf(
      [list, other],
      [rule('a', list, { required: 'M/1' }), rule('b', other, { required: 'M/8', positions: ['hub'] })],
      {
        supersessions: [
          { from: 'M/1', to: 'M/2', direction: 'one-way', known },
          { from: 'M/8', to: 'M/9', direction: 'one-way', known },
        ],
      },
    );
    const question = { unit: unit('2015-05-05'), position: 'pin', parts: ['M/3'], fittedOn: null };
    const { rulebook } = recordQuestion(book, question, LATER);
    expect(rulebook.rules.map(({ key }) => key)).toEqual(['a']);
    expect(rulebook.sources.map(({ key }) => key)).toEqual(['parts-list']);
    expect(rulebook.supersessions.map(({ from }) => from)).toEqual(['M/1']);
  });
});

describe('an explanation', () => {
  it('gives the whole chain: the question, the verdict, the ruling, what lost and why, then and now, and the rules', () => {
    const list = paper('parts-list', '2010-01-01', 'pl-1');
    const bulletin = paper('service-bulletin', '2016-03-01', 'sb-4');
    const book = bookOf(
      [list, bulletin],
      [
        rule('a', list, { required: 'M/1', inForce: { from: day('2010-01-01'), to: Infinity } }),
        rule('b', bulletin, {
          required: 'M/2',
          barred: [bar('M/1')],
          action: 'call-back',
          inForce: { from: day('2016-03-01'), to: Infinity },
        }),
      ],
    );
    const question = { unit: unit('2015-05-05'), position: 'pin', parts: ['M/1'], fittedOn: day('2015-06-01') };
    expect(explain(createJudge(book, LATER).judge(question), book)).toEqual([
      'Asked: M/1 at pin of a talus, model T4, fitted on 1 Jun 2015; by the papers in force on 1 Jan 2020, as known on 1 Jan 2020 at 00:00 UTC.',
      'Outdated: M/1 was right when it was fitted on 1 Jun 2015 and no longer is. Barred by service bulletin SB-4 of 1 Mar 2016: it lets go later than the required part and puts the drive line at risk. Required: M/2 (service bulletin SB-4 of 1 Mar 2016). Call the owner back to have it changed.',
      'Built 5 May 2015: M/2 is required (by service bulletin SB-4 of 1 Mar 2016); never M/1 (service bulletin SB-4 of 1 Mar 2016: it lets go later than the required part and puts the drive line at risk).',
      'Settled: one answer for every way the unit can be.',
      'The serial makes no difference here.',
      'Weighed for units built 5 May 2015: rule b version 1 decides; rule a version 1 (parts list PL-1 of 1 Jan 2010) has a lower standing than rule b version 1.',
      'M/1: by the papers in force on 1 Jun 2015, as known now, it was right.',
      'M/1: by those papers as the shop knew them that day, it was right.',
      'rule a version 1 stands in parts list PL-1 of 1 Jan 2010: for units built any day, M/1 is required. In force since 1 Jan 2010.',
      'rule b version 1 stands in service bulletin SB-4 of 1 Mar 2016: for units built any day, M/2 is required; M/1 is barred: it lets go later than the required part and puts the drive line at risk. In force since 1 Mar 2016.',
    ]);
  });
});
