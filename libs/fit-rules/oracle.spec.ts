import { CAME_WITH_UNIT, columnDay } from './bulk-columns';
import { createJudge, type Judge } from './judge';
import { oracleThen, oracleVerdict } from './testing/oracle';
import { Draw, stream, world } from './testing/random-book';
import { verdicts, type PartQuestion, type Verdict } from './verdict';

/** Set REVRIGHT_ORACLE_CASES to run longer; every thousandth case has a new seed, so any failure can be met again. */
const CASES = Number(process.env.REVRIGHT_ORACLE_CASES ?? 50_000);
const QUESTIONS_A_BOOK = 10;

/** The verdict as whole columns of installs are judged; undefined where a row of columns cannot hold the question. */
function codeByColumns(
  { bulk }: Judge,
  { unit, position, fittedOn }: PartQuestion,
  parts: readonly number[],
): number | undefined {
  const [span, ...more] = unit.built;
  if (span === undefined || more.length > 0 || parts.length !== 1) return undefined;
  const slot = bulk.slotOfUnit(
    bulk.slotsOfUnit(bulk.lineOf(unit.line, [position === 'p1' ? 'p2' : 'p1', position]), unit),
    1,
  );
  const column = (value: number) => Int32Array.of(value);
  const codes = new Uint8Array(1);
  const rows = {
    slot: column(slot),
    part: column(parts[0]!),
    builtFrom: column(columnDay(span.from)),
    builtTo: column(columnDay(span.to)),
    fittedOn: column(fittedOn ?? CAME_WITH_UNIT),
  };
  bulk.judgeColumns(rows, 1, codes);
  return codes[0];
}

describe('the compiled rulebook against the oracle', () => {
  it(`gives the oracle's verdict in ${CASES} random cases, with reasons and on the fast path alike`, () => {
    const seen = new Map<Verdict, number>();
    for (let seed = 1; seed <= CASES / QUESTIONS_A_BOOK; seed++) {
      const draw = new Draw(stream(seed));
      const book = draw.rulebook();
      const at = { today: draw.below(24), now: draw.below(6) };
      const judge = createJudge(book, at);
      for (let i = 0; i < QUESTIONS_A_BOOK; i++) {
        const question = draw.question();
        const { unit, position, parts, fittedOn } = question;
        const expected = oracleVerdict(book, question, world, at);
        const told = judge.judge(question).verdict;
        const indexes = parts.map((part) => judge.bulk.partIndex(part));
        const slot = judge.bulk.slotOf(unit, position);
        const code = judge.bulk.verdictCodeOfSet(slot, indexes, unit.built, fittedOn ?? CAME_WITH_UNIT);
        const byColumns = codeByColumns(judge, question, indexes) ?? code;
        if (told !== expected || verdicts[code] !== expected || verdicts[byColumns] !== expected) {
          const fast = `fast ${verdicts[code]}, by columns ${verdicts[byColumns]}`;
          throw new Error(`seed ${seed}, question ${i}: oracle ${expected}, reasons ${told}, ${fast}`);
        }
        seen.set(expected, (seen.get(expected) ?? 0) + 1);
      }
    }
    for (const verdict of verdicts) expect(seen.get(verdict)).toBeGreaterThan(CASES / 500);
  });

  it('agrees on every single build date, every boundary among them, by the papers of every day', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const draw = new Draw(stream(seed * 7_919));
      const book = draw.rulebook();
      const drawn = draw.question();
      const now = draw.below(6);
      for (let built = -1; built <= 26; built++) {
        const unit = { ...drawn.unit, built: [{ from: built, to: built + 1 }] };
        const question = { ...drawn, unit, parts: ['M/1'] };
        for (let today = 0; today <= 25; today += 5) {
          const expected = oracleThen(book, question, 'M/1', world, { inForceOn: today, knownAt: now });
          const { verdict } = createJudge(book, { today, now }).judge(question);
          expect(verdict === 'outdated' || verdict === 'wrong' ? 'no' : verdict).toBe(expected);
        }
      }
    }
  });

  it('tells what the shop could have known by the papers and the knowledge of the fitting day', () => {
    for (let seed = 1; seed <= 2_000; seed++) {
      const draw = new Draw(stream(seed * 104_729));
      const book = draw.rulebook();
      const at = { today: draw.below(24), now: 5, endOfDay: (day: number) => Math.floor(day / 5) };
      const question = { ...draw.question(), fittedOn: draw.below(24) };
      for (const { part, thenAsKnown } of createJudge(book, at).judge(question).candidates) {
        const clock = { inForceOn: question.fittedOn, knownAt: at.endOfDay(question.fittedOn) };
        expect(thenAsKnown).toBe(oracleThen(book, question, part, world, clock));
      }
    }
  });
});
