import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import type { FindingList } from '../../../../../libs/contracts';
import { sayDayText } from '../../lib/say';
import { Said } from '../../components/said';
import classes from './rulebook.module.css';

const SEVERITY_WORDS = { error: 'Mend this', warning: 'Look at this', note: 'Good to know' } as const;

/** What the audit found, worst first: where, for which units, one unit that shows it, and what would mend it. */
export function FindingsList({ list }: { list: FindingList }) {
  if (list.findings.length === 0) {
    return (
      <EmptyView title="Nothing found">
        <p>By the papers in force on {sayDayText(list.inForceOn)} nothing of this kind is wrong.</p>
      </EmptyView>
    );
  }
  return (
    <ul className={classes.list}>
      {list.findings.map((one) => (
        <li key={one.sentence} className={classes.finding}>
          <span className={classes.severity} data-severity={one.severity}>
            {SEVERITY_WORDS[one.severity]}
          </span>
          <div>
            <p>
              <Said>{one.sentence}</Said>
            </p>
            {one.example ? (
              <p className="soft">
                <Said>{`For example: ${one.example}.`}</Said>
              </p>
            ) : null}
            <p>
              <strong>To mend it:</strong> <Said>{one.mend}</Said>
            </p>
            {one.line ? (
              <p>
                <Link
                  to="/wall-chart/$line"
                  params={{ line: one.line }}
                  search={{ inForceOn: list.inForceOn, knownOn: list.knownOn }}
                  hash={one.position ?? undefined}
                >
                  In the picture
                </Link>
              </p>
            ) : null}
          </div>
        </li>
      ))}
    </ul>
  );
}
