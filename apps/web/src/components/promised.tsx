import { sayDayText } from '../lib/say';
import classes from './promised.module.css';

/** The promised day in words: today and late are said so. */
export function Promised({ on, today }: { on: string | null; today: string }) {
  if (on === null) return <span className="soft">no day promised</span>;
  if (on === today) return <strong>promised for today</strong>;
  if (on < today) return <span className={classes.late}>{`late, promised ${sayDayText(on)}`}</span>;
  return <span className="soft">{`promised ${sayDayText(on)}`}</span>;
}
