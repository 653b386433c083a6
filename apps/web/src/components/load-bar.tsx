import type { BenchLoad } from '../../../../libs/contracts';
import { sayMinutes } from '../lib/minutes';
import classes from './load-bar.module.css';

/** The open minutes of labour against the bench's day, in words and as a bar; what goes over the day is hatched. */
export function LoadBar({ load }: { load: BenchLoad }) {
  const { dayMinutes, openMinutes, onHoldMinutes, unestimated } = load;
  const most = Math.max(dayMinutes, openMinutes, 1);
  const within = Math.min(openMinutes, dayMinutes);
  const over = openMinutes - dayMinutes;
  const besides = [
    onHoldMinutes > 0 ? `${sayMinutes(onHoldMinutes)} on hold` : '',
    unestimated > 0 ? `${unestimated} without minutes yet` : '',
  ].filter(Boolean);
  return (
    <div className={classes.load}>
      <p>
        <strong>{sayMinutes(openMinutes)}</strong> of a day of {sayMinutes(dayMinutes)}
        {over > 0 ? <span className={classes.more}>{`, ${sayMinutes(over)} too much`}</span> : null}
      </p>
      <div className={classes.bar} aria-hidden="true">
        <span className={classes.within} style={{ width: `${(within / most) * 100}%` }} />
        {over > 0 ? <span className={classes.over} style={{ width: `${(over / most) * 100}%` }} /> : null}
      </div>
      {besides.length > 0 ? <p className="soft">{besides.join(', ')}</p> : null}
    </div>
  );
}
