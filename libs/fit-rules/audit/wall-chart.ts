import type { DaySpan } from '../../day';
import type { CompiledRulebook } from '../ruling-for';
import type { Outcome, PieceWhere } from '../ruling';
import type { RuleRef } from '../fit-rule';
import type { CutStretch } from '../ruling-for';
import { coursesOf, type Course } from './courses';
import type { AuditLine } from './finding';

/** One span of build dates in a row of the chart. */
export interface ChartSpan {
  readonly built: DaySpan;
  readonly outcome: Outcome;
  readonly deciding: readonly RuleRef[];
}

/** What belongs in one position over the build dates, left to right without a hole. */
export interface ChartRow {
  readonly position: string;
  /** Names models, serials and options where the row holds only for some units; all null and empty else. */
  readonly where: Omit<PieceWhere, 'built'>;
  readonly spans: readonly ChartSpan[];
}

/**
 * The data of the wall chart of one line: positions down, build dates across, as by the compiled papers and knowledge.
 * A position has one row, or one per kind of unit where models, serials or options make a difference.
 */
export function wallChart(compiled: CompiledRulebook, line: AuditLine): readonly ChartRow[] {
  return line.positions.flatMap((position) => {
    const courses = coursesOf(compiled.history.book(line.line, position), line, compiled);
    const [first] = courses;
    if (first && courses.every((course) => courseText(course) === courseText(first))) {
      return [{ position, where: { model: null, serial: null, options: [] }, spans: spansOf(first.stretches) }];
    }
    return courses.map(({ where, stretches }) => ({ position, where, spans: spansOf(stretches) }));
  });
}

/** Two courses with the same text give every build date the same outcome. */
function courseText({ stretches }: Course): string {
  const turns = stretches.filter(({ weighed }, i) => weighed.key !== stretches[i - 1]?.weighed.key);
  return turns.map(({ built, weighed }) => `${built.from} ${weighed.key}`).join('\n');
}

/** Neighbours with the same outcome are one span. */
function spansOf(stretches: readonly CutStretch[]): ChartSpan[] {
  const spans: (ChartSpan & { key: string })[] = [];
  for (const { built, weighed } of stretches) {
    const last = spans[spans.length - 1];
    if (last?.key === weighed.key) {
      const deciding = [
        ...last.deciding,
        ...weighed.deciding.filter((ref) => !last.deciding.some((one) => one.key === ref.key)),
      ];
      spans[spans.length - 1] = { ...last, built: { from: last.built.from, to: built.to }, deciding };
    } else spans.push({ built, outcome: weighed.outcome, deciding: weighed.deciding, key: weighed.key });
  }
  return spans.map(({ built, outcome, deciding }) => ({ built, outcome, deciding }));
}
