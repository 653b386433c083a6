import { Link } from '@tanstack/react-router';
import type { RulebookOverview } from '../../../../../libs/contracts';
import { SOURCE_WORDS, sayDayText } from '../../lib/say';
import classes from './rulebook.module.css';

/** Every paper with its kind, how much it counts, its state and its day. The higher the standing, the more it counts. */
export function PapersTable({ sources }: { sources: RulebookOverview['sources'] }) {
  return (
    <div className={classes.scroll}>
      <table>
        <thead>
          <tr>
            <th scope="col">Paper</th>
            <th scope="col">Kind</th>
            <th scope="col">Standing</th>
            <th scope="col">State</th>
            <th scope="col">Issued</th>
            <th scope="col">Rules</th>
          </tr>
        </thead>
        <tbody>
          {sources.map((one) => (
            <tr key={one.key}>
              <td>
                <Link to="/bulletins/$id" params={{ id: one.id }} className="num">
                  {one.number}
                </Link>
                <br />
                {one.title} <span className="soft">by {one.publisher}</span>
              </td>
              <td>{SOURCE_WORDS[one.kind]}</td>
              <td className="num">{one.standing}</td>
              <td>{one.state}</td>
              <td>
                {sayDayText(one.issued)}
                {one.effective && one.effective !== one.issued ? `, in force ${sayDayText(one.effective)}` : ''}
              </td>
              <td className="num">{one.ruleCount}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
