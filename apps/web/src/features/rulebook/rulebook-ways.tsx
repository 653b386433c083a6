import { Link } from '@tanstack/react-router';
import type { RulebookOverview } from '../../../../../libs/contracts';
import { count } from '../../lib/say';
import classes from './rulebook.module.css';

/** From the rulebook to its audit and to the wall chart of each line. */
export function RulebookWays({ lines }: { lines: RulebookOverview['lines'] }) {
  return (
    <>
      <p className={classes.ways}>
        <Link to="/rulebook/findings">Look it over for gaps and disputes</Link>
        <Link to="/bulletins">Bulletins and other papers</Link>
      </p>
      <h2>Wall charts</h2>
      <p className={classes.ways}>
        {lines.map(({ code, name, ruleCount }) => (
          <Link key={code} to="/wall-chart/$line" params={{ line: code }}>
            {name} ({count(ruleCount, 'rule')})
          </Link>
        ))}
      </p>
    </>
  );
}
