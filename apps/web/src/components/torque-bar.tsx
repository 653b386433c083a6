import type { StrengthView } from '../../../../libs/contracts';
import { sayNewtonMetres, sayRange } from '../lib/torque-words';
import classes from './torque-bar.module.css';

interface Row {
  label: string;
  low: number;
  high: number;
  kind: 'required' | 'fitted' | 'rated';
}

/** One torque axis with the required part, the fitted part and the drive line's rating; ranges are bars. */
export function TorqueBar({ strength }: { strength: StrengthView }) {
  const rows = rowsOf(strength);
  if (rows.length === 0) return null;
  const most = Math.max(...rows.map((row) => row.high)) * 1.1;
  const at = (torque: number) => (torque / most) * 600;
  return (
    <figure className={classes.figure}>
      <svg
        viewBox={`0 0 640 ${rows.length * 36 + 22}`}
        role="img"
        aria-label={inWords(rows)}
        className={classes.picture}
      >
        {rows.map((row, index) => (
          <g key={row.kind} transform={`translate(0 ${index * 36})`}>
            <text x="0" y="13" className={classes.label}>{`${row.label}: ${sayRange(row)}`}</text>
            <line x1="0" x2="620" y1="24" y2="24" stroke="var(--rule)" />
            <Mark row={row} at={at} />
          </g>
        ))}
        <text x="0" y={rows.length * 36 + 15} className={classes.axis}>
          0
        </text>
        <text x="620" y={rows.length * 36 + 15} className={classes.axis} textAnchor="end">
          {sayNewtonMetres(most)}
        </text>
      </svg>
      <figcaption>
        {strength.sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <p className="soft">{strength.caution}</p>
      </figcaption>
    </figure>
  );
}

function Mark({ row, at }: { row: Row; at: (torque: number) => number }) {
  const left = at(row.low);
  const width = Math.max(4, at(row.high) - left);
  if (row.kind === 'rated')
    return <path d={`M${left} 17 v14 M${left - 5} 17 h10 M${left - 5} 31 h10`} stroke="var(--ink)" strokeWidth="2.5" />;
  const ink = row.kind === 'required' ? 'var(--right)' : 'var(--wrong)';
  return (
    <rect
      x={left}
      y="19"
      width={width}
      height="10"
      rx={row.high > row.low ? 5 : 0}
      fill={ink}
      opacity={row.high > row.low ? 0.8 : 1}
    />
  );
}

function rowsOf({ required, fitted, rated }: StrengthView): Row[] {
  const rows: Row[] = [];
  if (required) rows.push({ label: 'Required lets go at', kind: 'required', ...required });
  if (fitted) rows.push({ label: 'Fitted lets go at', kind: 'fitted', ...fitted });
  if (rated !== null) rows.push({ label: 'Drive line is rated for', kind: 'rated', low: rated, high: rated });
  return rows;
}

function inWords(rows: readonly Row[]): string {
  return rows.map((row) => `${row.label} ${sayRange(row)}.`).join(' ');
}
