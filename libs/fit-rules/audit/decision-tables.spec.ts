import { daySpan } from '../../day';
import type { FitRule } from '../fit-rule';
import { bookOf, paper, rule } from '../testing/made-rules';
import { auditRulebook } from './audit-rulebook';
import { disputedGroups } from './compare-audits';
import type { Finding } from './finding';

/*
 * Published decision tables run through the audit. Columns become axes: the first is the build date, the second the
 * serial. Two rules that overlap in a table are two rules of one paper that name different parts: a dispute.
 *
 * Table and expected overlaps and gaps: Calvanese, Dumas, Laurson, Maggi, Montali, Teinemaa, "Semantics and Analysis of
 * DMN Decision Tables", BPM 2016 (arXiv 1603.07466), loan grade example, with the results that the jdmn project's tests
 * give for it (SweepRuleOverlapValidatorTest, SweepMissingRuleValidatorWithMergeTest, SweepMissingIntervalValidatorTest).
 * There the boxes are closed and real; here they are closed-open, which has the same areas.
 */

const list = paper('parts-list');

interface Box {
  readonly name: string;
  readonly x: readonly [number, number];
  readonly y: readonly [number, number];
}

const keyOf = (value: number) => String(value).padStart(5, '0');

function ruleOf({ name, x, y }: Box): FitRule {
  const serials = { scheme: 'size', from: keyOf(y[0]), to: keyOf(y[1]) };
  return rule(name, list, { required: `M/${name}`, built: daySpan(x[0], x[1]), serials });
}

function auditBoxes(boxes: readonly Box[], x: readonly [number, number]) {
  const production = daySpan(x[0], x[1]);
  const line = { line: 'talus', positions: ['pin'], models: ['T4'], schemes: ['size'], production };
  const nothing = { catalogue: null, withdrawnSources: new Set<string>() };
  return auditRulebook(bookOf([list], boxes.map(ruleOf)), { inForceOn: 0, knownAt: 0, lines: [line], ...nothing });
}

/** The area of a finding, with the second column cut to its domain. */
function area({ where }: Finding, domain: readonly [number, number]): number {
  const { built, serial } = where!;
  const span = serial === null || serial === 'another-scheme' ? { from: null, to: null } : serial;
  const from = Math.max(domain[0], span.from === null ? -Infinity : Number(span.from));
  const to = Math.min(domain[1], span.to === null ? Infinity : Number(span.to));
  return (built[0]!.to - built[0]!.from) * Math.max(0, to - from);
}

function covers({ where }: Finding, x: number, y: number): boolean {
  const { built, serial } = where!;
  const inX = built[0]!.from <= x && x < built[0]!.to;
  if (serial === null || serial === 'another-scheme') return inX;
  const key = keyOf(y);
  return inX && (serial.from === null || serial.from <= key) && (serial.to === null || key < serial.to);
}

describe('the loan grade table', () => {
  const income = [0, 2_500] as const;
  const size = [0, 5_000] as const;
  const boxes: readonly Box[] = [
    { name: '1', x: [0, 1_000], y: [0, 1_000] },
    { name: '2', x: [250, 750], y: [4_000, 5_000] },
    { name: '3', x: [500, 1_500], y: [500, 3_000] },
    { name: '4', x: [2_000, 2_500], y: [0, 2_000] },
  ];
  const findings = auditBoxes(boxes, income);
  const gaps = findings.filter(({ code }) => code === 'gap');
  const disputes = findings.filter(({ code }) => code === 'disputed');

  it('has exactly one overlap, of rules 1 and 3, of area 250,000', () => {
    expect(disputedGroups(findings).map((group) => group.map(({ key }) => key))).toEqual([['1', '3']]);
    expect(disputes.reduce((sum, finding) => sum + area(finding, size), 0)).toBe(250_000);
  });

  it('leaves 7,750,000 of 12,500,000 uncovered', () => {
    expect(gaps.reduce((sum, finding) => sum + area(finding, size), 0)).toBe(7_750_000);
  });

  it('leaves exactly the published boxes uncovered', () => {
    const published: readonly Omit<Box, 'name'>[] = [
      { x: [0, 250], y: [1_000, 5_000] },
      { x: [250, 500], y: [1_000, 4_000] },
      { x: [500, 750], y: [3_000, 4_000] },
      { x: [750, 1_000], y: [3_000, 5_000] },
      { x: [1_000, 1_500], y: [0, 500] },
      { x: [1_000, 1_500], y: [3_000, 5_000] },
      { x: [1_500, 2_000], y: [0, 5_000] },
      { x: [2_000, 2_500], y: [2_000, 5_000] },
    ];
    // Boxes may be cut otherwise; the points they hold may not differ. Every box edge lies on this grid.
    for (let x = 0; x < 2_500; x += 125) {
      for (let y = 0; y < 5_000; y += 250) {
        const expected = published.some((box) => box.x[0] <= x && x < box.x[1] && box.y[0] <= y && y < box.y[1]);
        expect([x, y, gaps.some((gap) => covers(gap, x, y))]).toEqual([x, y, expected]);
      }
    }
  });

  it('each column by itself leaves the published intervals open', () => {
    const open = (side: 'x' | 'y', production: readonly [number, number]) => {
      const rules = boxes.map(({ name, ...box }) =>
        rule(name, list, { required: 'M/1', built: daySpan(...box[side]) }),
      );
      const line = { line: 'talus', positions: ['pin'], models: [], schemes: [], production: daySpan(...production) };
      const context = { inForceOn: 0, knownAt: 0, lines: [line], catalogue: null, withdrawnSources: new Set<string>() };
      return auditRulebook(bookOf([list], rules), context).map(({ where }) => [
        where!.built[0]!.from,
        where!.built[0]!.to,
      ]);
    };
    expect(open('x', income)).toEqual([[1_500, 2_000]]);
    expect(open('y', size)).toEqual([[3_000, 4_000]]);
  });
});

describe('groups of overlapping rules', () => {
  it('are the largest that overlap in one place: of the graph 1-2 1-5 2-3 2-5 3-4 4-5 4-6 exactly five', () => {
    // Four bars in a ring (2 left, 3 top, 4 right, 5 bottom), 1 on the corner of 2 and 5, 6 on 4 alone.
    const boxes: readonly Box[] = [
      { name: '1', x: [0, 20], y: [0, 20] },
      { name: '2', x: [0, 10], y: [0, 100] },
      { name: '3', x: [0, 100], y: [90, 100] },
      { name: '4', x: [90, 100], y: [0, 100] },
      { name: '5', x: [0, 100], y: [0, 10] },
      { name: '6', x: [95, 110], y: [40, 60] },
    ];
    const groups = disputedGroups(auditBoxes(boxes, [0, 110])).map((group) => group.map(({ key }) => key).join());
    expect([...groups].sort()).toEqual(['1,2,5', '2,3', '3,4', '4,5', '4,6']);
  });
});
