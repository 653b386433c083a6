import type { VerdictWord } from '../../../../libs/contracts';
import { VerdictShape } from './verdict-shape';
import classes from './verdict-mark.module.css';

/** A verdict as shape, word and ink; `shapeOnly` keeps the word for those who listen. */
export function VerdictMark({ verdict, shapeOnly = false }: { verdict: VerdictWord; shapeOnly?: boolean }) {
  return (
    <span className={classes.mark} style={{ color: `var(--${verdict})` }}>
      <svg className={classes.shape} viewBox="-10 -10 20 20" aria-hidden="true">
        <VerdictShape verdict={verdict} />
      </svg>
      <span className={shapeOnly ? 'sr-only' : classes.word}>{verdict}</span>
    </span>
  );
}
