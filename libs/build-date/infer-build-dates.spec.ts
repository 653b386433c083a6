import * as fc from 'fast-check';
import { day, intersectionOf, isSubset, saySet, setHolds, type DaySet } from '../day';
import { BuildDateAnswerSchema, writeAnswer } from './answer';
import type { Evidence } from './evidence';
import { inferBuildDates } from './infer-build-dates';
import { inferBuildDays } from './infer-build-days';
import { anyEvidenceList, buildDay, trueEvidenceList } from './testing/evidence-of-a-build-day';
import { MAKER, TODAY, shop } from './testing/invented-shop';
import { readWrittenDays } from './written-days';

const infer = (evidence: Evidence[]) => inferBuildDates(evidence, shop, TODAY);
const serial = (text: string): Evidence => ({ id: 'serial', kind: 'serial-scheme', maker: MAKER, serial: text });
const printed = (date: string, id = 'printed'): Evidence => ({ id, kind: 'printed-date', date });
const receipt = (date: string): Evidence => ({ id: 'receipt', kind: 'receipt', date });
const stamp = (date: string): Evidence => ({ id: 'stamp', kind: 'part-stamp', part: 'gear case', date });
const said = (days: DaySet) => saySet(days);

describe('the build date inferred from evidence', () => {
  it('always holds the true build day when every piece is true', () => {
    fc.assert(
      fc.property(
        buildDay.chain((built) => fc.tuple(fc.constant(built), trueEvidenceList(built))),
        ([built, evidence]) => {
          const answer = infer(evidence);
          expect(answer.pieces.filter((piece) => piece.problem !== null)).toEqual([]);
          expect(answer.pieces.filter((piece) => !setHolds(piece.days, built))).toEqual([]);
          expect(setHolds(answer.days, built)).toBe(true);
          expect([answer.conflicts, answer.misreadings]).toEqual([[], []]);
        },
      ),
      { numRuns: 1_000 },
    );
  });

  it('is never enlarged by one more piece', () => {
    fc.assert(
      fc.property(anyEvidenceList, (evidence) => {
        evidence.forEach((_, at) => {
          expect(isSubset(infer(evidence.slice(0, at + 1)).days, infer(evidence.slice(0, at)).days)).toBe(true);
        });
      }),
    );
  });

  it('does not depend on the order of the pieces, in days and in conflicts', () => {
    const sortedConflicts = (evidence: Evidence[]) =>
      infer(evidence)
        .conflicts.map((ids) => [...ids].sort().join())
        .sort();
    fc.assert(
      fc.property(
        anyEvidenceList.chain((list) =>
          fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
        ),
        ([evidence, shuffled]) => {
          expect(infer(shuffled).days).toEqual(infer(evidence).days);
          expect(sortedConflicts(shuffled)).toEqual(sortedConflicts(evidence));
        },
      ),
    );
  });

  it('is the same whether asked fast or with reasons', () => {
    fc.assert(
      fc.property(anyEvidenceList, (evidence) => {
        expect(inferBuildDays(evidence, shop, TODAY)).toEqual(infer(evidence).days);
      }),
    );
  });

  it('does not count a piece set aside, but still shows what it says and why it was set aside', () => {
    fc.assert(
      fc.property(anyEvidenceList, fc.nat(7), (evidence, chosen) => {
        const setAside = { reason: 'label from another machine', by: 'Ines' };
        const aside = evidence.map((piece, at) => (at === chosen ? { ...piece, setAside } : piece));
        const without = evidence.filter((_, at) => at !== chosen);
        const [left, right] = [infer(aside), infer(without)];
        expect([left.days, left.conflicts]).toEqual([right.days, right.conflicts]);
        expect(inferBuildDays(aside, shop, TODAY)).toEqual(right.days);
        expect(left.pieces[chosen]?.setAside ?? null).toEqual(chosen < evidence.length ? setAside : null);
      }),
    );
  });

  it('names only groups of pieces that share no day, and only when nothing is left', () => {
    fc.assert(
      fc.property(anyEvidenceList, (evidence) => {
        const { bounds, days, conflicts, pieces } = infer(evidence);
        const shared = (ids: readonly string[]) =>
          pieces
            .filter((piece) => ids.includes(piece.id))
            .reduce<DaySet>((left, piece) => intersectionOf(left, piece.days), [bounds]);
        expect(conflicts.length > 0).toBe(days.length === 0);
        for (const ids of conflicts) {
          expect(shared(ids)).toEqual([]);
          for (const id of ids) expect(shared(ids.filter((other) => other !== id))).not.toEqual([]);
        }
      }),
    );
  });

  it('crosses the wire and comes back the same', () => {
    fc.assert(
      fc.property(anyEvidenceList, (evidence) => {
        const answer = infer(evidence);
        const wire = BuildDateAnswerSchema.parse(JSON.parse(JSON.stringify(writeAnswer(answer))));
        expect(readWrittenDays(wire.days)).toEqual(answer.days);
        expect(wire.pieces.map((piece) => readWrittenDays(piece.days))).toEqual(
          answer.pieces.map((piece) => piece.days),
        );
        expect(wire).toEqual(writeAnswer(answer));
      }),
    );
  });
});

describe('the bounds of a build date', () => {
  it('are 1 January 1950 and the day after today, both possible', () => {
    const answer = infer([]);
    expect(said(answer.days)).toBe('1 Jan 1950 to 26 Nov 2026');
    expect(answer.sentence).toBe('No evidence says when it was built.');
  });

  it.each(['1949-12-31', '2026-11-27', '1949', '2027'])('make %s a misreading that rules nothing out', (date) => {
    const answer = infer([printed(date), receipt('2020-01-01')]);
    expect(answer.pieces[0]!.problem?.code).toBe('outside-bounds');
    expect(said(answer.days)).toBe('1 Jan 1950 to 1 Jan 2020');
  });

  it.each(['1950-01-01', '2026-11-26', '2024-02-29', '2020-W53'])('allow %s', (date) => {
    expect(infer([printed(date)]).pieces[0]!.problem).toBeNull();
  });
});

describe('an answer of several spans', () => {
  it('says which piece splits it', () => {
    const answer = infer([serial('K4C00123'), receipt('2020-06')]);
    expect(said(answer.days)).toBe(
      '1 Mar 1994 to 31 Mar 1994, or 1 Mar 2004 to 31 Mar 2004, or 1 Mar 2014 to 31 Mar 2014',
    );
    expect(answer.splits.map(({ by, gap }) => [by, said([gap])])).toEqual([
      [['serial'], '1 Apr 1994 to 29 Feb 2004'],
      [['serial'], '1 Apr 2004 to 28 Feb 2014'],
    ]);
    expect(answer.splits[0]!.sentence).toContain('Not 1 Apr 1994 to 29 Feb 2004, because: Serial K4C00123');
  });

  it('is left with one span by a piece that rules the others out', () => {
    const answer = infer([serial('K4C00123'), stamp('2003-W30'), receipt('2010')]);
    expect(said(answer.days)).toBe('1 Mar 2004 to 31 Mar 2004');
    expect(answer.splits).toEqual([]);
    expect(answer.sentence).toBe('Built 1 Mar 2004 to 31 Mar 2004 (31 possible days).');
  });

  it('is not said to be split by a piece that only ends a span early', () => {
    const production: Evidence = { id: 'production', kind: 'production-span', first: '1994-02', last: '2004-03-10' };
    const answer = infer([serial('K4C00123'), production]);
    expect(answer.splits.map((split) => split.by)).toEqual([['serial']]);
    expect(said(answer.days)).toBe('1 Mar 1994 to 31 Mar 1994, or 1 Mar 2004 to 10 Mar 2004');
  });
});

describe('evidence that conflicts', () => {
  it('is told apart into every smallest group that cannot be true together', () => {
    const answer = infer([
      printed('2016-05'),
      stamp('2017-03'),
      receipt('2015-01'),
      printed('2016-05-20', 'second plate'),
    ]);
    expect(answer.days).toEqual([]);
    expect(answer.conflicts).toEqual([
      ['printed', 'stamp'],
      ['printed', 'receipt'],
      ['stamp', 'receipt'],
      ['stamp', 'second plate'],
      ['receipt', 'second plate'],
    ]);
    expect(answer.sentence).toBe(
      'No day fits all the evidence: 5 groups of pieces cannot all be true; read those plates again.',
    );
  });

  it('can be a group of three of which every two agree', () => {
    const answer = infer([serial('K4C00123'), stamp('1995-01-01'), receipt('2003-12-31')]);
    expect(answer.conflicts).toEqual([['serial', 'stamp', 'receipt']]);
  });

  it('is settled when a person sets one piece aside', () => {
    const aside = { ...receipt('2015-01'), setAside: { reason: 'receipt of another unit', by: 'Ines' } };
    const answer = infer([stamp('2017-03'), aside]);
    expect(answer.conflicts).toEqual([]);
    expect(answer.days).toEqual([{ from: day('2017-03-01'), to: TODAY + 2 }]);
    expect(answer.pieces[1]!.sentence).toBe('Receipt of Jan 2015: built on or before 31 Jan 2015.');
  });
});
