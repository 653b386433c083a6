import type { DaySpan } from '../day';
import { CAME_WITH_UNIT, columnDay } from './bulk-columns';
import { createJudge } from './judge';
import { bookOf, paper, rule, unit } from './testing/made-rules';
import { verdicts } from './verdict';

const PIECE_DAYS = 100;

/**
 * A book in which part M/i belongs to the i-th piece of the build dates, and each piece has a paper of its own day; before
 * them all, M/first belonged everywhere.
 */
function piecesOf(count: number) {
  const papers = Array.from({ length: count }, (_, i) => {
    const issued = i * PIECE_DAYS;
    return { ...paper('service-bulletin', '2010-01-01', `p${i}`), issued, received: issued };
  });
  const rules = papers.map((source, i) =>
    rule(`r${i}`, source, {
      required: `M/${i}`,
      built: { from: i === 0 ? -Infinity : i * PIECE_DAYS, to: i + 1 === count ? Infinity : (i + 1) * PIECE_DAYS },
      inForce: { from: i * PIECE_DAYS, to: Infinity },
    }),
  );
  const inForce = { from: -Infinity, to: 0 };
  const first = rule('first', papers[0]!, { required: 'M/first', inForce });
  return bookOf(papers, [first, ...rules]);
}

/** Days about every boundary, alone, over one boundary and over all; open sides; days no calendar has; no day at all. */
function spansAbout(count: number): DaySpan[] {
  const days = Array.from({ length: count + 1 }, (_, i) => i * PIECE_DAYS).flatMap((day) => [day - 1, day, day + 1]);
  const single = days.map((day) => ({ from: day, to: day + 1 }));
  const across = days.map((day) => ({ from: day, to: day + 3 }));
  return [
    ...single,
    ...across,
    { from: -Infinity, to: 0 },
    { from: count * PIECE_DAYS, to: Infinity },
    { from: -Infinity, to: Infinity },
    { from: -1_500_000_000, to: -1_499_999_999 },
    { from: 1_500_000_000, to: 1_500_000_001 },
    { from: 50, to: 50 },
  ];
}

describe('judging columns of installs', () => {
  // Few pieces are counted through and many are halved, so both sides of that turn are met, and papers alike.
  it.each([1, 2, 7, 8, 9, 10, 20])(
    'agrees with judging one by one where the build dates fall into %i pieces',
    (count) => {
      const today = count * PIECE_DAYS;
      const judge = createJudge(piecesOf(count), { today, now: today * 86_400_000 });
      const { bulk } = judge;
      const fittingDays = [null, -1, 0, PIECE_DAYS, PIECE_DAYS - 1, today - 1, today + 1];
      const parts = ['M/0', `M/${count - 1}`, `M/${Math.floor(count / 2)}`, 'M/first', 'M/none'];
      const rows = spansAbout(count).flatMap((built) =>
        parts.flatMap((part) => fittingDays.map((fittedOn) => ({ built, part, fittedOn }))),
      );
      const facts = unit('2010-01-01');
      const slot = bulk.slotOfUnit(bulk.slotsOfUnit(bulk.lineOf('talus', ['pin']), facts), 0);
      const codes = new Uint8Array(rows.length);
      const columns = {
        slot: new Int32Array(rows.length).fill(slot),
        part: Int32Array.from(rows, ({ part }) => bulk.partIndex(part)),
        builtFrom: Int32Array.from(rows, ({ built }) => columnDay(built.from)),
        builtTo: Int32Array.from(rows, ({ built }) => columnDay(built.to)),
        fittedOn: Int32Array.from(rows, ({ fittedOn }) => fittedOn ?? CAME_WITH_UNIT),
      };
      bulk.judgeColumns(columns, rows.length, codes);
      const oneByOne = rows.map(({ built, part, fittedOn }) => {
        const question = { unit: { ...facts, built: [built] }, position: 'pin', parts: [part], fittedOn };
        return built.from < built.to ? judge.judge(question).verdict : 'undecided';
      });
      expect(rows.map((row, i) => ({ ...row, verdict: verdicts[codes[i]!] }))).toEqual(
        rows.map((row, i) => ({ ...row, verdict: oneByOne[i] })),
      );
    },
  );
});
