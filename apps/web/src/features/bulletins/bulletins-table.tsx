import { Link } from '@tanstack/react-router';
import type { BulletinRow } from '../../../../../libs/contracts';
import { SOURCE_WORDS, count, sayDayText } from '../../lib/say';
import { STATE_WORDS } from './bulletin-words';
import classes from './bulletins.module.css';

/** The papers as a list, newest first; one that is not published yet stands out. */
export function BulletinsTable({ bulletins }: { bulletins: readonly BulletinRow[] }) {
  return (
    <ul className={classes.list}>
      {bulletins.map((one) => (
        <li key={one.id}>
          <Link to="/bulletins/$id" params={{ id: one.id }} className={classes.row} data-state={one.state}>
            <span className={classes.number}>{one.number}</span>
            <span>
              <strong>{one.title}</strong>
              <br />
              <span className="soft">
                {SOURCE_WORDS[one.kind]} by {one.publisher}, {count(one.ruleCount, 'rule')}
              </span>
            </span>
            <span>
              {sayDayText(one.issued)}
              {one.effective && one.effective !== one.issued ? (
                <span className="soft">
                  <br />
                  in force {sayDayText(one.effective)}
                </span>
              ) : null}
            </span>
            <span className={classes.state}>{STATE_WORDS[one.state]}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
