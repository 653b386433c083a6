import * as fc from 'fast-check';
import { day, daySet, intersectionOf, measureOf, unionOf, type DaySet } from '../day';
import { EVIDENCE_KINDS, type EvidenceKind } from './evidence';
import { MAKER, TODAY, shop } from './testing/invented-shop';
import { cutAt, whatWouldSettle } from './what-would-settle';

const between = (from: string, to: string): DaySet => [{ from: day(from), to: day(to) }];
const ask = (days: DaySet, boundaries: string[], missing: readonly EvidenceKind[] = EVIDENCE_KINDS) =>
  whatWouldSettle({
    cuts: cutAt(days, boundaries.map(day)),
    missing,
    maker: MAKER,
    line: 'Fell tillers',
    shop,
    today: TODAY,
  });

describe('possible days cut at boundaries', () => {
  it('are neither lost nor doubled, and no cut crosses a boundary', () => {
    const spans = fc.array(fc.tuple(fc.nat(100), fc.integer({ min: 1, max: 20 })), { maxLength: 6 });
    fc.assert(
      fc.property(spans, fc.array(fc.nat(120), { maxLength: 5 }), (given, boundaries) => {
        const days = daySet(given.map(([from, length]) => ({ from, to: from + length })));
        const cuts = cutAt(days, boundaries);
        expect(cuts.reduce<DaySet>((all, cut) => unionOf(all, cut.days), [])).toEqual(days);
        expect(cuts.reduce((sum, cut) => sum + measureOf(cut.days), 0)).toBe(measureOf(days));
        for (const { days: part } of cuts)
          for (const edge of boundaries)
            expect(
              intersectionOf(part, [{ from: -Infinity, to: edge }]).length === 0 ||
                intersectionOf(part, [{ from: edge, to: Infinity }]).length === 0,
            ).toBe(true);
      }),
    );
  });
});

describe('what would settle a ruling', () => {
  it('is nothing when every possible day gives the same answer', () => {
    const answer = ask(between('2016-01-01', '2017-01-01'), ['2015-07-01', '2019-03-01']);
    expect(answer).toEqual({
      needed: false,
      kinds: [],
      sentence: 'The date is not needed: every possible build day gives the same answer.',
    });
  });

  it('is nothing when stretches that lie apart have the same outcome', () => {
    const cuts = [
      { days: between('2014-03-01', '2014-04-01'), outcome: 'pin 12' },
      { days: between('2004-03-01', '2004-04-01'), outcome: 'pin 12' },
    ];
    expect(whatWouldSettle({ cuts, missing: EVIDENCE_KINDS, maker: MAKER, shop, today: TODAY }).needed).toBe(false);
  });

  it('is surely the printed date or the serial when the boundary falls between months, the plate before the rest', () => {
    const answer = ask(between('2010-01-01', '2015-07-01'), ['2012-05-01']);
    const sure = answer.kinds.filter(({ sureness }) => sureness === 'sure').map(({ kind }) => kind);
    expect(sure).toEqual(['serial-scheme', 'printed-date']);
    expect(answer.sentence).toBe('Read the serial number on the data plate; it leaves one answer.');
  });

  it('is only probably a printed month when the boundary falls inside a month', () => {
    const [first] = ask(between('2010-01-01', '2015-01-01'), ['2012-05-16'], ['printed-date']).kinds;
    expect(first!.sureness).toBe('likely');
    expect(first!.share).toBeGreaterThan(0.9);
    expect(first!.share).toBeLessThan(1);
  });

  it('ranks surer kinds first, and of equally sure kinds the one that is cheaper to read', () => {
    const rank = { sure: 0, likely: 1, possible: 2 };
    const { kinds } = ask(between('2004-01-01', '2026-01-01'), ['2016-05-01', '2020-02-01']);
    expect(kinds.length).toBeGreaterThan(3);
    kinds.slice(1).forEach((kind, at) => {
      const before = kinds[at]!;
      expect(
        rank[before.sureness] < rank[kind.sureness] ||
          (before.sureness === kind.sureness && before.effort <= kind.effort),
      ).toBe(true);
    });
    expect(kinds.map(({ kind }) => kind)).not.toContain('first-seen');
  });

  it('is no year digit that fits both sides, but is a floor that rules the earlier side out', () => {
    const cuts = [
      { days: between('2004-03-01', '2004-04-01'), outcome: 'pin 12' },
      { days: between('2014-03-01', '2014-04-01'), outcome: 'pin 14' },
    ];
    const { kinds } = whatWouldSettle({
      cuts,
      missing: ['serial-scheme', 'part-stamp', 'receipt'],
      maker: MAKER,
      line: 'Fell tillers',
      shop,
      today: TODAY,
    });
    expect(kinds.map(({ kind, share }) => [kind, share])).toEqual([
      ['receipt', 0.5],
      ['part-stamp', 0.5],
    ]);
  });

  it('is the conflict itself when the evidence leaves no day', () => {
    expect(ask([], ['2012-05-01'])).toEqual({
      needed: true,
      kinds: [],
      sentence: 'No possible build day is left: the evidence conflicts, and that has to be settled first.',
    });
  });

  it('is said to be unknown when no kind is left to read', () => {
    expect(ask(between('2010-01-01', '2015-07-01'), ['2012-05-01'], []).sentence).toBe(
      'No evidence known for this maker would settle it; ask the maker.',
    );
  });
});
