import { intersectionOf } from '../day';
import type { FitRule } from './fit-rule';
import { createJudge } from './judge';
import { publishInto } from './publish-into';
import { sayVerdict } from './say-verdict';
import { scopeOfRules, scopeOfSupersessions, type RuleScope } from './scopes';
import { Draw, parts, stream } from './testing/random-book';
import type { Judgement, PartQuestion } from './verdict';

const AT = { today: 12, now: 3 };

/** Runs a law over many drawn cases; the seed is named when it fails. */
function overCases(count: number, law: (draw: Draw) => void): void {
  for (let seed = 1; seed <= count; seed++) {
    try {
      law(new Draw(stream(seed * 15_485_863)));
    } catch (error) {
      throw new Error(`seed ${seed}: ${String(error)}`, { cause: error });
    }
  }
}

function covers({ line, models, positions, built }: RuleScope, { unit, position }: PartQuestion): boolean {
  const model = models.length === 0 || unit.model === null || models.includes(unit.model);
  return line === unit.line && model && positions.includes(position) && intersectionOf(unit.built, [built]).length > 0;
}

/** What an install keeps of a judgement; pieces may be cut otherwise where rules ask for more, and say the same. */
function summary({ verdict, action, candidates }: Judgement) {
  return { verdict, action, then: candidates.map(({ then }) => then) };
}

describe('laws of judging', () => {
  it('the order in which rules, papers and supersessions come in makes no difference', () => {
    overCases(500, (draw) => {
      const book = draw.rulebook();
      const turned = {
        ...book,
        rules: [...book.rules].reverse(),
        sources: [...book.sources].reverse(),
        supersessions: [...book.supersessions].reverse(),
      };
      const question = draw.question();
      expect(createJudge(turned, AT).judge(question)).toEqual(createJudge(book, AT).judge(question));
    });
  });

  it('a rule that was withdrawn is as if never published, for whoever asks later', () => {
    overCases(500, (draw) => {
      const book = draw.rulebook();
      const gone = draw.pick(book.rules).key;
      const withdrawn = publishInto(book, { withdraws: [gone] }, 2);
      const never = { ...book, rules: book.rules.filter(({ key, known }) => key !== gone || known.from > 2) };
      const question = { ...draw.question(), fittedOn: null };
      expect(createJudge(withdrawn, AT).judge(question)).toEqual(createJudge(never, AT).judge(question));
    });
  });

  it('narrowing the possible build dates never turns a settled ruling into another one', () => {
    overCases(1_200, (draw) => {
      const judge = createJudge(draw.rulebook(), AT);
      const { unit, position } = draw.question();
      const wide = judge.ruling(unit, position);
      const narrow = judge.ruling({ ...unit, built: intersectionOf(unit.built, draw.built()) }, position);
      if (!wide.settled || narrow.pieces.length === 0) return;
      const saying = (ruling: typeof wide) => {
        const { outcome } = ruling.pieces[0]!;
        if (outcome.kind !== 'decided') throw new Error('a settled ruling decides');
        return [outcome.saying.required, ...outcome.saying.allowed.filter((part) => judgedWrong(part))];
        function judgedWrong(part: string): boolean {
          return judge.judge({ unit, position, parts: [part], fittedOn: null }).verdict === 'allowed';
        }
      };
      expect(narrow.settled).toBe(true);
      expect(saying(narrow)).toEqual(saying(wide));
    });
  });

  it('learning the serial, the model or an option never turns a settled ruling into an unsettled one', () => {
    overCases(1_200, (draw) => {
      const judge = createJudge(draw.rulebook(), AT);
      const { unit, position } = draw.question();
      const known = draw.unit();
      const learned = {
        ...unit,
        model: unit.model ?? known.model,
        serial: unit.serial ?? known.serial,
        options: { ...known.options, ...unit.options },
      };
      if (judge.ruling(unit, position).settled) expect(judge.ruling(learned, position).settled).toBe(true);
    });
  });

  it('a bar is never lost unless lifted or replaced: a barred part is never right or allowed', () => {
    overCases(1_200, (draw) => {
      const book = draw.rulebook();
      const judge = createJudge(book, AT);
      const { unit, position } = draw.question();
      for (const { grounds } of judge.ruling(unit, position).pieces) {
        for (const { built, barred, lifted } of grounds) {
          for (const { part } of barred) {
            const there = { ...unit, built: [built] };
            const { verdict } = judge.judge({ unit: there, position, parts: [part], fittedOn: null });
            expect(['right', 'allowed']).not.toContain(verdict);
          }
          for (const { part, by } of lifted) {
            const lifting = book.rules.find(({ key }) => key === by.key)!;
            expect([lifting.required, ...lifting.allowed]).toContain(part);
          }
        }
      }
    });
  });

  it('what the papers of the fitting day said, as known that day, is never changed by rules added later', () => {
    overCases(500, (draw) => {
      const book = draw.rulebook();
      const added: FitRule[] = draw
        .rulebook()
        .rules.map((rule) => ({ ...rule, key: `later ${rule.key}`, source: 'source 0' }));
      const grown = publishInto(book, { opens: added }, 4);
      const at = { today: 20, now: 5, endOfDay: () => 3 };
      const question = { ...draw.question(), fittedOn: draw.below(20) };
      const before = createJudge(book, at)
        .judge(question)
        .candidates.map(({ thenAsKnown }) => thenAsKnown);
      const after = createJudge(grown, at)
        .judge(question)
        .candidates.map(({ thenAsKnown }) => thenAsKnown);
      expect(after).toEqual(before);
    });
  });

  it('a change of rules touches no install outside its scope', () => {
    overCases(1_200, (draw) => {
      const book = draw.rulebook();
      const added = draw
        .rulebook()
        .rules.slice(0, 2)
        .map((rule) => ({ ...rule, key: `new ${rule.key}`, source: 'source 1' }));
      const ended = draw.pick(book.rules);
      const changed = publishInto(book, { opens: added, ends: [{ rule: ended.key, on: draw.below(24) }] }, 3);
      const scopes = scopeOfRules([...added, ended]);
      const question = draw.question();
      if (scopes.some((scope) => covers(scope, question))) return;
      expect(summary(createJudge(changed, AT).judge(question))).toEqual(summary(createJudge(book, AT).judge(question)));
    });
  });

  it('a change of supersessions touches no install outside its scope', () => {
    overCases(800, (draw) => {
      const book = draw.rulebook();
      const step = {
        from: draw.pick(parts),
        to: draw.pick(parts),
        direction: 'one-way' as const,
        known: { from: 0, to: 9 },
      };
      const question = draw.question();
      if (scopeOfSupersessions(book, [step]).some((scope) => covers(scope, question))) return;
      const changed = { ...book, supersessions: [...book.supersessions, step] };
      expect(createJudge(changed, AT).judge(question)).toEqual(createJudge(book, AT).judge(question));
    });
  });

  it('questions of one class get the same verdict for the same reasons in the same words', () => {
    let alike = 0;
    overCases(300, (draw) => {
      const judge = createJudge(draw.rulebook(), AT);
      const first = new Map<string, Judgement>();
      const asked = draw.question();
      for (let n = 0; n < 20; n++) {
        const question = { ...asked, unit: draw.unit() };
        const name = judge.classOf(question);
        const other = first.get(name);
        if (other === undefined) first.set(name, judge.judge(question));
        else {
          if (JSON.stringify(other.question.unit) !== JSON.stringify(question.unit)) alike++;
          expect(told(judge.judge(question))).toEqual(told(other));
        }
      }
    });
    expect(alike).toBeGreaterThan(500);
  });
});

/** All that is kept of a judgement and said of it, without what repeats the question. */
function told(judgement: Judgement) {
  const { verdict, candidates, couldHaveKnown, deciding, bars, action, ruling } = judgement;
  return {
    ...{ verdict, couldHaveKnown, deciding, bars, action, words: sayVerdict(judgement) },
    candidates: candidates.map(({ part, verdict: own, then, thenAsKnown }) => ({ part, own, then, thenAsKnown })),
    pieces: ruling.pieces.map(({ outcome }) => outcome),
    boundaries: ruling.boundaries,
  };
}
