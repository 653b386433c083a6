import { Link } from '@tanstack/react-router';
import type { SearchHits } from '../../../../../libs/contracts';
import { STAGE_WORDS, sayDayText } from '../../lib/say';
import classes from './search-hits-list.module.css';

/** The tickets found, newest first, each with what matched. */
export function SearchHitsList({ hits }: { hits: SearchHits }) {
  return (
    <ul className={classes.hits}>
      {hits.map((hit) => (
        <li key={hit.id}>
          <Link to="/tickets/$id" params={{ id: hit.id }} className={classes.hit}>
            <span className={classes.number}>{hit.number}</span>
            <span>
              <strong>{hit.unit}</strong> <span className="num">{hit.serial ?? ''}</span>
            </span>
            <span>{hit.owner}</span>
            <span className="soft">{hit.closedOn ? `closed ${sayDayText(hit.closedOn)}` : STAGE_WORDS[hit.stage]}</span>
            <span className="soft">{hit.matched}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
