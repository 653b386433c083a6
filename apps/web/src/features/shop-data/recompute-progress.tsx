import { useQuery } from '@tanstack/react-query';
import { recheckQuery } from '../../lib/recheck-query';
import { count } from '../../lib/say';
import classes from './shop-data.module.css';

/** How far the units that a change can touch have been dated and judged again. */
export function RecomputeProgress({ recheckId }: { recheckId: number }) {
  const recheck = useQuery(recheckQuery(recheckId)).data;
  if (!recheck) return null;
  const done = recheck.state === 'done';
  const most = Math.max(1, recheck.planned);
  return (
    <div className={classes.progress} role="status">
      <p>
        <strong>{done ? 'Kept, and the units are dated again.' : 'Kept. The units are being dated again.'}</strong>{' '}
        {count(recheck.judged, 'part in place', 'parts in place')} judged, {count(recheck.changed, 'verdict')} changed,{' '}
        {count(recheck.flagsRaised, 'flag')} raised, {count(recheck.flagsCleared, 'flag')} cleared,{' '}
        {count(recheck.callbacksOpened, 'callback')} opened, {count(recheck.callbacksClosed, 'callback')} closed
        {recheck.setAside > 0 ? `, ${count(recheck.setAside, 'unit')} set aside` : ''}.
      </p>
      {done ? null : <progress max={most} value={recheck.judged} aria-label="Parts judged" />}
    </div>
  );
}
