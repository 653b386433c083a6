import type { VerdictWord } from '../../../../libs/contracts';
import { VerdictShape } from './verdict-shape';
import classes from './line-sketch.module.css';

export interface SketchDot {
  code: string;
  name: string;
  x: number;
  y: number;
  verdict: VerdictWord | null;
}

interface LineSketchProps {
  /** outline as path data in a box of 100 x 60 */
  outline: string;
  dots: readonly SketchDot[];
  onPick?: (code: string) => void;
}

/** The line's outline with its positions as numbered dots, each shaped by its verdict; the list beside it says the same. */
export function LineSketch({ outline, dots, onPick }: LineSketchProps) {
  const words = dots.map((dot, index) => `${index + 1} ${dot.name}: ${dot.verdict ?? 'not recorded'}`).join('; ');
  return (
    <svg viewBox="-2 -2 104 64" className={classes.sketch} role="img" aria-label={`Sketch with positions. ${words}`}>
      <path d={outline} className={classes.outline} />
      {dots.map((dot, index) => (
        <g
          key={dot.code}
          transform={`translate(${dot.x} ${dot.y})`}
          onClick={() => onPick?.(dot.code)}
          className={classes.dot}
        >
          <circle r="4.2" className={classes.ground} />
          <g transform="scale(0.3)">
            {dot.verdict ? <VerdictShape verdict={dot.verdict} /> : <circle r="8" className={classes.open} />}
          </g>
          <text x="4.4" y="-1.6" className={classes.number}>
            {index + 1}
          </text>
        </g>
      ))}
    </svg>
  );
}
