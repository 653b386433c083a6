import { day, daySpan, type Day } from '../day';
import { createJudge, endOfDayUtc } from './judge';
import { namingFor } from './naming';
import { publishInto } from './publish-into';
import { sayRuling, sayUnits } from './say-ruling';
import { sayVerdict } from './say-verdict';
import { diffRulebooks } from './diff';
import type { FitRule, Rulebook } from './fit-rule';
import { usualStanding, type Source, type SourceKind } from './source';
import type { UnitFacts } from './unit-facts';
import type { Verdict } from './verdict';

/*
 * The story of one shear pin, invented from end to end.
 *
 * Holm builds the Talus chipper from 2012 on. Its feed roller is held by two shear pins, left and right.
 *
 *  1 Mar 2012  The owner's manual and the parts list name pin P-100. The list allows P-100K, the same pin in zinc.
 *  1 Jun 2015  A revised parts list names P-200, a grooved pin, for units built from 1 Jul 2015 on. The shaft is the
 *              same until the middle of that year; the list says so by date.
 *  1 Sep 2017  Bulletin SB-1: the change of shaft in truth came in by serial, in the middle of the summer of 2015, at
 *              serial 4500 of the Holm five-digit scheme. Serials before 4500 take P-100, from 4500 on P-200. It takes
 *              the place of the list and of the revised list.
 *  1 May 2020  Bulletin SB-2: the zinc pin P-100K was made of stronger wire and breaks too late. It is barred for
 *              every unit and units that are out are to be called back. It says nothing else.
 *
 * The shop publishes each paper some time after its day: the revised list half a year late, SB-2 a month late.
 *
 * Knowledge days: A 1 Jan 2013, B 1 Feb 2016, C 1 Jan 2018, D 10 May 2020 (SB-2 is out, the shop has not read it),
 * E 1 Jul 2020 (the shop has).
 */

const LINE = 'talus';
const PLACE = 'feed-roller-pin';

function paper(key: string, kind: SourceKind, issued: string): Source {
  const on = day(issued);
  return { key, kind, publisher: 'Holm', number: key, title: key, issued: on, effective: null, received: on };
}

const manual = paper('OM-1', 'owners-manual', '2012-03-01');
const list = paper('PL-1', 'parts-list', '2012-03-01');
const revised = paper('PL-2', 'revised-parts-list', '2015-06-01');
const bulletin1 = paper('SB-1', 'service-bulletin', '2017-09-01');
const bulletin2 = paper('SB-2', 'service-bulletin', '2020-05-01');

const blank: FitRule = {
  key: '',
  version: 1,
  line: LINE,
  models: [],
  options: [],
  positions: [PLACE],
  built: daySpan(-Infinity, Infinity),
  serials: null,
  inForce: daySpan(-Infinity, Infinity),
  known: { from: -Infinity, to: Infinity },
  source: '',
  required: null,
  allowed: [],
  barred: [],
  action: 'nothing',
  replaces: [],
};

function rule(key: string, source: Source, says: Partial<FitRule>): FitRule {
  return { ...blank, key, source: source.key, inForce: daySpan(source.issued, Infinity), ...says };
}

const P100 = 'HOLM/P100';
const P100K = 'HOLM/P100K';
const P200 = 'HOLM/P200';

function publish(book: Rulebook, on: string, source: Source, opens: readonly FitRule[]): Rulebook {
  return publishInto(book, { sources: [source], opens }, Date.parse(`${on}T09:00:00Z`));
}

let book: Rulebook = { rules: [], sources: [], supersessions: [], standing: usualStanding };
book = publish(book, '2012-03-05', manual, [rule('om', manual, { required: P100 })]);
book = publish(book, '2012-03-05', list, [rule('pl', list, { required: P100, allowed: [P100K] })]);
book = publish(book, '2015-12-01', revised, [
  rule('pl2', revised, { required: P200, built: daySpan(day('2015-07-01'), Infinity) }),
]);
const beforeSecond = publish(book, '2017-09-04', bulletin1, [
  rule('sb1-old', bulletin1, {
    required: P100,
    allowed: [P100K],
    serials: { scheme: 'holm-5', from: null, to: '04500' },
    replaces: ['pl', 'pl2'],
    action: 'next-service',
  }),
  rule('sb1-new', bulletin1, {
    required: P200,
    serials: { scheme: 'holm-5', from: '04500', to: null },
    replaces: ['pl', 'pl2'],
    action: 'next-service',
  }),
]);
book = publish(beforeSecond, '2020-06-02', bulletin2, [
  rule('sb2', bulletin2, {
    barred: [{ part: P100K, reason: 'breaks-later', note: '' }],
    action: 'call-back',
  }),
]);

const knowledgeDays = ['2013-01-01', '2016-02-01', '2018-01-01', '2020-05-10', '2020-07-01'].map(day);

function chipper(serial: string | null, from: string, to = from): UnitFacts {
  const key = serial === null ? null : { scheme: 'holm-5', key: serial };
  return { line: LINE, model: 'T4', options: {}, serial: key, built: [daySpan(day(from), day(to) + 1)] };
}

function judgedOn(on: Day, unit: UnitFacts, parts: readonly string[], fittedOn: string | null) {
  const judge = createJudge(book, { today: on, now: endOfDayUtc(on) });
  return judge.judge({ unit, position: PLACE, parts, fittedOn: fittedOn === null ? null : day(fittedOn) });
}

function overTime(unit: UnitFacts, part: string, fittedOn: string | null): readonly Verdict[] {
  return knowledgeDays.map((on) => judgedOn(on, unit, [part], fittedOn).verdict);
}

describe('the story of the feed roller pin', () => {
  it('a chipper of 2013 takes P-100 from the first day to the last', () => {
    expect(overTime(chipper('01200', '2013-04-10'), P100, null)).toEqual(['right', 'right', 'right', 'right', 'right']);
  });

  it('its zinc pin was allowed until SB-2; on 10 May 2020 the shop does not know yet that it is outdated', () => {
    const unit = chipper('01200', '2013-04-10');
    expect(overTime(unit, P100K, '2013-06-01')).toEqual(['allowed', 'allowed', 'allowed', 'allowed', 'outdated']);
    const late = judgedOn(day('2020-07-01'), unit, [P100K], '2013-06-01');
    expect(late.action).toBe('call-back');
    expect(late.couldHaveKnown).toBe(false);
    expect(late.candidates[0]!.then).toBe('allowed');
    expect(sayVerdict(late, namingFor(book))).toEqual({
      technician:
        'Outdated: HOLM/P100K was allowed when it was fitted on 1 Jun 2013 and no longer is. Barred by service bulletin SB-2 of 1 May 2020: it lets go later than the required part and puts the drive line at risk. Required: HOLM/P100 (service bulletin SB-1 of 1 Sep 2017). Call the owner back to have it changed.',
      owner:
        'The part fitted at feed-roller-pin was good when it was fitted; newer papers ask for another. Please bring the unit in to have it changed.',
    });
  });

  it('a zinc pin fitted on 20 May 2020 is wrong by the papers of that day, though the shop could not have known', () => {
    const unit = chipper('01200', '2013-04-10');
    const late = judgedOn(day('2020-07-01'), unit, [P100K], '2020-05-20');
    expect(late.verdict).toBe('wrong');
    expect(late.couldHaveKnown).toBe(false);
    const careless = judgedOn(day('2020-07-01'), unit, [P100K], '2020-06-20');
    expect(careless.verdict).toBe('wrong');
    expect(careless.couldHaveKnown).toBe(true);
  });

  it('a chipper built on 20 Jul 2015 with a serial before 4500 got the list pin, lost it by date, and has it back by serial', () => {
    // In 2013 nobody can know of 2015; asked all the same, the papers of that day say P-100.
    const unit = chipper('04310', '2015-07-20');
    expect(overTime(unit, P100, null)).toEqual(['right', 'wrong', 'right', 'right', 'right']);
  });

  it('that P-100 is wrong and not outdated in 2016: the revised list was in force on the build day, though not yet read', () => {
    const unit = chipper('04310', '2015-07-20');
    const by2016 = judgedOn(day('2016-02-01'), unit, [P100], '2015-07-20');
    expect(by2016.verdict).toBe('wrong');
    expect(by2016.couldHaveKnown).toBe(false);
    expect(by2016.candidates[0]!.thenAsKnown).toBe('right');
  });

  it('a mixture is judged place by place: left P-200 as built, right P-100 as fitted at a repair', () => {
    const unit = chipper('04620', '2015-08-02');
    expect(overTime(unit, P200, null)).toEqual(['wrong', 'right', 'right', 'right', 'right']);
    expect(overTime(unit, P100, '2015-09-01')).toEqual(['right', 'wrong', 'wrong', 'wrong', 'wrong']);
    // Fitted in spring 2015 P-100 would have been what the papers of that day asked for.
    expect(judgedOn(day('2018-01-01'), unit, [P100], '2015-05-20').verdict).toBe('outdated');
  });

  it('with the serial worn off, the build date no longer helps once SB-1 counts by serial', () => {
    const unit = chipper(null, '2015-01-01', '2015-12-31');
    const judge2016 = createJudge(book, { today: day('2016-02-01'), now: endOfDayUtc(day('2016-02-01')) });
    expect(sayRuling(judge2016.ruling(unit, PLACE), namingFor(book))).toEqual([
      'Built 1 Jan 2015 to 30 Jun 2015: HOLM/P100 is required, HOLM/P100K allowed too (by parts list PL-1 of 1 Mar 2012).',
      'Built 1 Jul 2015 to 31 Dec 2015: HOLM/P200 is required (by revised parts list PL-2 of 1 Jun 2015).',
      'Not settled: the answer depends on whether it was built before 1 Jul 2015 or later.',
      'The serial makes no difference here.',
    ]);
    const today = createJudge(book, { today: day('2020-07-01'), now: endOfDayUtc(day('2020-07-01')) });
    const scheme = { ...unit, serial: { scheme: 'holm-5', key: null } };
    const ruling = today.ruling(scheme, PLACE);
    expect(ruling.boundaries).toEqual([{ axis: 'serial', scheme: 'holm-5', at: '04500' }]);
    expect(ruling.notNeeded).toEqual([{ fact: 'build-date' }]);
    expect(overTime(scheme, P100, null)).toEqual(['right', 'undecided', 'undecided', 'undecided', 'undecided']);
    // P-100K is barred whatever the serial is: to see that, nobody has to find the serial.
    expect(overTime(scheme, P100K, '2016-03-01')[4]).toBe('wrong');
  });

  it('a pin told by its marks only, plain or grooved, stays undecided; one told apart from the zinc pin is settled', () => {
    const unit = chipper('01200', '2013-04-10');
    expect(judgedOn(day('2018-01-01'), unit, [P100, P200], null).verdict).toBe('undecided');
    expect(judgedOn(day('2020-07-01'), unit, [P200, 'HOLM/P300'], null).verdict).toBe('wrong');
  });

  it('what SB-2 would change is seen before it is published: one answer, for serials before 4500', () => {
    const clock = { inForceOn: day('2020-07-01'), knownAt: endOfDayUtc(day('2020-07-01')) };
    const changes = diffRulebooks({ rulebook: beforeSecond, ...clock }, { rulebook: book, ...clock });
    const within = changes.filter(({ where }) => where.serial !== null && where.serial !== 'another-scheme');
    expect(within.map(({ where }) => where.serial)).toEqual([{ scheme: 'holm-5', from: null, to: '04500' }]);
    expect(sayUnits({ ...within[0]!.where, model: null, options: [] })).toBe('serials before 4500 (holm-5)');
    // A serial of no known scheme still goes by the old lists, on which the bar of SB-2 lies as well.
    expect(changes.filter((change) => !within.includes(change)).map(({ where }) => where.serial)).toEqual([
      'another-scheme',
    ]);
  });
});
