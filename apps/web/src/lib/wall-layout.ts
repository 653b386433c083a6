import type { WallChartView } from '../../../../libs/contracts';
import { civilDateOf, dayOf, parseDay, type Day } from '../../../../libs/day';

type Row = WallChartView['rows'][number];
export type WallSpan = Row['spans'][number];

/** Sizes of the wall picture in its own units; it is drawn as wide as there is room. */
export const WALL = { width: 1_200, label: 250, head: 34, row: 46, bar: 28 } as const;
/** A figure of the number's type is this wide. */
const FIGURE = 8.2;

export interface DrawnSpan {
  readonly span: WallSpan;
  readonly x: number;
  readonly width: number;
  /** Number of the fill; parts in order of their first span in the row. Null where nothing is filled. */
  readonly ink: number | null;
  /** The required part's number (or what is allowed); null where there is no room for it. */
  readonly label: string | null;
}

export interface DrawnRow {
  readonly row: Row;
  readonly y: number;
  readonly spans: readonly DrawnSpan[];
}

export interface WallLayout {
  readonly height: number;
  readonly years: readonly { readonly year: number; readonly x: number }[];
  readonly rows: readonly DrawnRow[];
}

/** Where everything of the picture stands. */
export function layWall({ production, rows }: Pick<WallChartView, 'production' | 'rows'>): WallLayout {
  const [from, to] = [dayIn(production.from), dayIn(production.to)];
  const xOf = (day: Day) => WALL.label + ((day - from) / (to - from)) * (WALL.width - WALL.label - 1);
  return {
    height: WALL.head + rows.length * WALL.row + 4,
    years: yearsBetween(from, to).map((year) => ({ year, x: xOf(dayOf(year, 1, 1)) })),
    rows: rows.map((row, i) => ({ row, y: WALL.head + i * WALL.row, spans: drawnSpans(row, xOf) })),
  };
}

function drawnSpans({ spans }: Row, xOf: (day: Day) => number): DrawnSpan[] {
  const inks = new Map<string, number>();
  return spans.map((span) => {
    const x = xOf(dayIn(span.from));
    const width = Math.max(1, xOf(dayIn(span.to)) - x);
    const words = spanWords(span);
    if (span.outcome !== 'decided') return { span, x, width, ink: null, label: null };
    if (!inks.has(words)) inks.set(words, inks.size);
    return { span, x, width, ink: inks.get(words)!, label: words.length * FIGURE + 10 <= width ? words : null };
  });
}

/** The part to fit; where only several are allowed, all of them. */
export function spanWords({ outcome, required, allowed }: WallSpan): string {
  if (outcome === 'disputed') return 'the papers disagree';
  if (outcome === 'nothing-said') return 'no paper says anything';
  return required?.number ?? allowed.map(({ number }) => number).join(' or ');
}

/** First of January of these years is marked: far enough apart to be read. */
function yearsBetween(from: Day, to: Day): number[] {
  const [first, last] = [civilDateOf(from - 1).year + 1, civilDateOf(to - 1).year];
  const step = Math.max(1, Math.ceil((last - first + 1) / 16));
  const years = [];
  for (let year = first; year <= last; year += step) years.push(year);
  return years;
}

function dayIn(text: string): Day {
  const day = parseDay(text);
  if (day === null) throw new RangeError(`the chart names a day that does not exist: ${text}`);
  return day;
}
