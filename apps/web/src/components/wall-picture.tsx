import { useId } from 'react';
import type { WallChartView } from '../../../../libs/contracts';
import { saySentence, saySpanText } from '../lib/say';
import { layWall, spanWords, WALL, type DrawnRow, type DrawnSpan } from '../lib/wall-layout';
import { INK_COUNT, WallInks } from './wall-inks';
import classes from './wall-picture.module.css';

/**
 * The rules of a line as a picture: positions down, build dates across, a span per required part with its number in it.
 * Paper shows through where no paper says anything; split diamonds stand along spans where papers disagree.
 */
export function WallPicture({ chart }: { chart: WallChartView }) {
  const id = useId();
  const { height, years, rows } = layWall(chart);
  return (
    <div className={classes.frame}>
      <svg
        className={classes.picture}
        viewBox={`0 0 ${WALL.width} ${height}`}
        role="img"
        aria-label={`Parts by position and build date on ${chart.line.name}; the table under the picture says the same.`}
      >
        <WallInks id={id} />
        {years.map(({ year, x }) => (
          <g key={year}>
            <line className={classes.rule} x1={x} x2={x} y1={WALL.head - 8} y2={height} />
            <text className={classes.year} x={x + 3} y={WALL.head - 12}>
              {year}
            </text>
          </g>
        ))}
        {rows.map((row, i) => (
          <WallRow key={`${row.row.position} ${row.row.when}`} drawn={row} before={rows[i - 1]} inks={id} />
        ))}
      </svg>
    </div>
  );
}

/** One position; its name stands once where it has a row for each kind of unit. */
function WallRow({ drawn, before, inks }: { drawn: DrawnRow; before: DrawnRow | undefined; inks: string }) {
  const { row, y, spans } = drawn;
  const named = before?.row.position === row.position;
  const middle = y + WALL.row / 2;
  return (
    <g id={named ? undefined : row.position}>
      <line className={classes.rule} x1={named ? WALL.label : 0} x2={WALL.width} y1={y} y2={y} />
      {named ? null : (
        <text className={classes.place} x={2} y={row.when ? middle - 3 : middle + 5}>
          {row.positionName}
        </text>
      )}
      {row.when ? (
        <text className={classes.units} x={2} y={named ? middle + 4 : middle + 14}>
          <title>{saySentence(row.when)}</title>
          {shortened(saySentence(row.when))}
        </text>
      ) : null}
      <line className={classes.baseline} x1={WALL.label} x2={WALL.width} y1={bottomOf(y)} y2={bottomOf(y)} />
      {spans.map((span) => (
        <g key={span.span.from}>
          <title>{`${row.positionName}, built ${saySpanText(span.span)}: ${spanWords(span.span)}`}</title>
          {span.span.outcome === 'disputed' ? <Dispute span={span} y={y} /> : null}
          {span.ink === null ? null : <Part span={span} y={y} fill={`url(#${inks}-${span.ink % INK_COUNT})`} />}
        </g>
      ))}
    </g>
  );
}

/** The column of names holds about this many letters; the table has the whole. */
const MOST_LETTERS = 40;
const shortened = (text: string): string =>
  text.length <= MOST_LETTERS ? text : `${text.slice(0, MOST_LETTERS - 1)}\u2026`;

const topOf = (y: number): number => y + (WALL.row - WALL.bar) / 2;
const bottomOf = (y: number): number => topOf(y) + WALL.bar;

function Part({ span, y, fill }: { span: DrawnSpan; y: number; fill: string }) {
  const { x, width, label } = span;
  return (
    <>
      <rect className={classes.span} x={x} y={topOf(y)} width={width} height={WALL.bar} fill={fill} />
      {label ? (
        <>
          <rect className={classes.plate} x={x + 4} y={topOf(y) + 5} width={label.length * 8.2 + 4} height={18} />
          <text className={classes.number} x={x + 6} y={topOf(y) + 19}>
            {label}
          </text>
        </>
      ) : null}
    </>
  );
}

/** Split diamonds along the span, one at least. */
function Dispute({ span: { x, width }, y }: { span: DrawnSpan; y: number }) {
  const middle = y + WALL.row / 2;
  const count = Math.max(1, Math.floor(width / 34));
  const half = Math.min(9, Math.max(3, width / 2));
  return (
    <>
      <line className={classes.disputedLine} x1={x} x2={x + width} y1={topOf(y)} y2={topOf(y)} />
      <line className={classes.disputedLine} x1={x} x2={x + width} y1={bottomOf(y)} y2={bottomOf(y)} />
      {Array.from({ length: count }, (_, i) => {
        const at = x + ((i + 0.5) * width) / count;
        return (
          <g key={i}>
            <path className={classes.diamondHalf} d={`M${at - 1} ${middle - half} v${half * 2} l${-half} ${-half} z`} />
            <path className={classes.diamondOther} d={`M${at + 1} ${middle - half} v${half * 2} l${half} ${-half} z`} />
          </g>
        );
      })}
    </>
  );
}
