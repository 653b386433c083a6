import type { BuildDates, EvidenceView } from '../../../../libs/contracts';
import { sayDayText, saySpans } from '../lib/say';
import { barOf, timeScale, type TimeScale, type WireSpan } from '../lib/time-scale';
import { evidenceWords } from '../lib/evidence-words';
import classes from './evidence-picture.module.css';

const ROW = 38;
const TOP = 26;
const WIDTH = 420;
const x = (percent: number): number => (percent / 100) * WIDTH;

interface EvidencePictureProps {
  buildDates: BuildDates;
  /** days at which some ruling changes */
  boundaries: readonly string[];
}

/** One axis of years, a bar per piece of evidence, the days that remain at the bottom, ruling changes as thin lines. */
export function EvidencePicture({ buildDates, boundaries }: EvidencePictureProps) {
  const { evidence, days } = buildDates;
  const spans: WireSpan[] = [...evidence.flatMap((piece) => piece.days), ...days].map(withoutFloor);
  const scale = timeScale([...spans, ...boundaries.map((day) => ({ from: day, to: day }))], 7);
  const height = TOP + (evidence.length + 1) * ROW + 4;
  return (
    <figure className={classes.figure}>
      <svg
        viewBox={`0 0 ${WIDTH} ${height}`}
        role="img"
        aria-label={inWords(buildDates, boundaries)}
        className={classes.picture}
      >
        <Hatching />
        <Years scale={scale} height={height} />
        {evidence.map((piece, index) => (
          <Row
            key={piece.id}
            label={evidenceWords(piece.kind)}
            spans={piece.days}
            scale={scale}
            y={TOP + index * ROW}
            piece={piece}
          />
        ))}
        <Row label="What remains" spans={days} scale={scale} y={TOP + evidence.length * ROW} />
        <Boundaries days={boundaries} scale={scale} height={height} />
      </svg>
    </figure>
  );
}

function Hatching() {
  return (
    <defs>
      <pattern id="set-aside" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="2" height="6" fill="var(--ink-soft)" />
      </pattern>
    </defs>
  );
}

function Years({ scale, height }: { scale: TimeScale; height: number }) {
  return (
    <g>
      {scale.years.map(({ year, at }) => (
        <g key={year}>
          <line x1={x(at)} x2={x(at)} y1="18" y2={height} stroke="var(--rule)" />
          <text x={x(at)} y="14" className={classes.year} textAnchor={at > 95 ? 'end' : at < 5 ? 'start' : 'middle'}>
            {year}
          </text>
        </g>
      ))}
    </g>
  );
}

interface RowProps {
  label: string;
  spans: readonly WireSpan[];
  scale: TimeScale;
  y: number;
  piece?: EvidenceView;
}

function Row({ label, spans, scale, y, piece }: RowProps) {
  const fill = piece?.setAside ? 'url(#set-aside)' : piece ? 'var(--rule-strong)' : 'var(--ink)';
  return (
    <g>
      <text x="0" y={y + 13} className={piece ? classes.label : classes.sum}>
        {label}
        {piece?.setAside ? ', set aside' : ''}
      </text>
      {spans.map((span) => {
        const { left, width } = barOf(scale, span);
        return (
          <rect
            key={`${span.from}-${span.to}`}
            x={x(left)}
            y={y + 19}
            width={x(width)}
            height={piece ? 9 : 12}
            fill={fill}
            stroke={piece?.setAside ? 'var(--ink-soft)' : 'none'}
          />
        );
      })}
    </g>
  );
}

function Boundaries({ days, scale, height }: { days: readonly string[]; scale: TimeScale; height: number }) {
  return (
    <g>
      {days.map((day) => {
        const at = x(barOf(scale, { from: day, to: day }).left);
        return (
          <line
            key={day}
            x1={at}
            x2={at}
            y1="18"
            y2={height}
            stroke="var(--wrong)"
            strokeWidth="1.5"
            strokeDasharray="5 3"
          />
        );
      })}
    </g>
  );
}

/** Before this day nothing is looked at; a span from there on has no beginning worth a place on the axis. */
const FLOOR = '1950-01-01';

function withoutFloor({ from, to }: WireSpan): WireSpan {
  return { from: from !== null && from <= FLOOR ? null : from, to };
}

/** The same facts as the picture, in words. */
function inWords({ evidence, days }: BuildDates, boundaries: readonly string[]): string {
  const rows = evidence.map(
    (piece) =>
      `${evidenceWords(piece.kind)}${piece.setAside ? ' (set aside)' : ''} permits ${saySpans(piece.days) || 'no day'}.`,
  );
  const lines = boundaries.length > 0 ? ` The ruling changes on ${boundaries.map(sayDayText).join(', ')}.` : '';
  return `${rows.join(' ')} What remains: ${saySpans(days) || 'no day'}.${lines}`;
}
