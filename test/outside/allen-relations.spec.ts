import { ALL_DAYS, daySpan, intersectionOf, meetOfSpans, type DaySpan } from '../../libs/day';
import { createJudge, usualStanding, type FitRule, type Rulebook } from '../../libs/fit-rules';

/*
 * The thirteen relations of two intervals: J. F. Allen, "Maintaining knowledge about temporal intervals", CACM 26(11),
 * 1983. The number 409 of entries in the composition table, and 13, are terms of OEIS A055203.
 */
const RELATIONS = {
  before: (a, b) => a.to < b.from,
  meets: (a, b) => a.to === b.from,
  overlaps: (a, b) => a.from < b.from && b.from < a.to && a.to < b.to,
  'finished-by': (a, b) => a.from < b.from && a.to === b.to,
  contains: (a, b) => a.from < b.from && b.to < a.to,
  starts: (a, b) => a.from === b.from && a.to < b.to,
  equals: (a, b) => a.from === b.from && a.to === b.to,
  'started-by': (a, b) => a.from === b.from && b.to < a.to,
  during: (a, b) => b.from < a.from && a.to < b.to,
  finishes: (a, b) => b.from < a.from && a.to === b.to,
  'overlapped-by': (a, b) => b.from < a.from && a.from < b.to && b.to < a.to,
  'met-by': (a, b) => a.from === b.to,
  after: (a, b) => b.to < a.from,
} as const satisfies Record<string, (a: DaySpan, b: DaySpan) => boolean>;
type Relation = keyof typeof RELATIONS;
const names = Object.keys(RELATIONS) as Relation[];

function relationOf(a: DaySpan, b: DaySpan): Relation {
  const holding = names.filter((name) => RELATIONS[name](a, b));
  expect(holding).toHaveLength(1);
  return holding[0]!;
}

function spansOn(points: number): DaySpan[] {
  const spans: DaySpan[] = [];
  for (let from = 0; from < points; from++) for (let to = from + 1; to < points; to++) spans.push(daySpan(from, to));
  return spans;
}

/** What each relation means for two rules: do their units meet, and into how many stretches do they cut all days? */
const MEANING: Record<Relation, { readonly share: boolean; readonly stretches: number }> = {
  before: { share: false, stretches: 5 },
  meets: { share: false, stretches: 4 },
  overlaps: { share: true, stretches: 5 },
  'finished-by': { share: true, stretches: 4 },
  contains: { share: true, stretches: 5 },
  starts: { share: true, stretches: 4 },
  equals: { share: true, stretches: 3 },
  'started-by': { share: true, stretches: 4 },
  during: { share: true, stretches: 5 },
  finishes: { share: true, stretches: 4 },
  'overlapped-by': { share: true, stretches: 5 },
  'met-by': { share: false, stretches: 4 },
  after: { share: false, stretches: 5 },
};

describe('the thirteen relations of two spans', () => {
  it('exactly one holds between any two of the ten spans on five points, as often as counted by hand', () => {
    const counts = new Map<Relation, number>();
    for (const a of spansOn(5))
      for (const b of spansOn(5)) counts.set(relationOf(a, b), (counts.get(relationOf(a, b)) ?? 0) + 1);
    const rare: readonly Relation[] = ['before', 'overlaps', 'contains', 'after', 'during', 'overlapped-by'];
    for (const name of names) expect([name, counts.get(name)]).toEqual([name, rare.includes(name) ? 5 : 10]);
  });

  it('their composition has 169 cells with 409 entries, 97 of them with one', () => {
    const spans = spansOn(7);
    const cells = new Map<string, Set<Relation>>();
    for (const a of spans) {
      for (const b of spans) {
        for (const c of spans) {
          const key = `${relationBetween(a, b)} ${relationBetween(b, c)}`;
          cells.set(key, (cells.get(key) ?? new Set()).add(relationBetween(a, c)));
        }
      }
    }
    const sizes = [...cells.values()].map((cell) => cell.size);
    expect(sizes).toHaveLength(169);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(409);
    expect(sizes.filter((size) => size === 1)).toHaveLength(97);
    expect([...cells.get('meets meets')!]).toEqual(['before']);
    expect([...cells.get('overlaps overlaps')!].sort()).toEqual(['before', 'meets', 'overlaps']);
    expect(cells.get('before after')!.size).toBe(13);
  });

  it('two spans share days in eleven of them and none where they are apart or only touch', () => {
    for (const a of spansOn(5)) {
      for (const b of spansOn(5)) {
        const { share } = MEANING[relationOf(a, b)];
        expect(meetOfSpans(a, b) !== null).toBe(share);
        expect(intersectionOf([a], [b]).length > 0).toBe(share);
      }
    }
  });

  it('two rules with such spans cut the build dates as each relation says', () => {
    for (const a of spansOn(5)) {
      for (const b of spansOn(5)) {
        const book = twoRules(a, b);
        const unit = { line: 'talus', model: 'T4', options: {}, serial: null, built: [ALL_DAYS] };
        const { pieces } = createJudge(book, { today: 0, now: 0 }).ruling(unit, 'pin');
        const { share, stretches } = MEANING[relationOf(a, b)];
        expect(pieces.some(({ outcome }) => outcome.kind === 'disputed')).toBe(share);
        // "Contains" and its like leave the longer rule on both sides; all other stretches differ from their neighbours.
        expect(pieces).toHaveLength(stretches);
      }
    }
  });
});

/** The same without an assertion for each of the many triples. */
function relationBetween(a: DaySpan, b: DaySpan): Relation {
  return names.find((name) => RELATIONS[name](a, b))!;
}

function twoRules(a: DaySpan, b: DaySpan): Rulebook {
  const rule = (key: string, built: DaySpan): FitRule => ({
    key,
    version: 1,
    line: 'talus',
    models: [],
    options: [],
    positions: ['pin'],
    built,
    serials: null,
    inForce: ALL_DAYS,
    known: ALL_DAYS,
    source: 'list',
    required: `HOLM/${key}`,
    allowed: [],
    barred: [],
    action: 'nothing',
    replaces: [],
  });
  const about = { publisher: 'Holm', number: '1', title: 'list', issued: 0, effective: null, received: 0 };
  const sources = [{ key: 'list', kind: 'parts-list' as const, ...about }];
  return { rules: [rule('a', a), rule('b', b)], sources, supersessions: [], standing: usualStanding };
}
