import { Link } from '@tanstack/react-router';
import { EmptyView } from '../../components/empty-view';
import type { RuleList } from '../../../../../libs/contracts';
import { Said } from '../../components/said';
import classes from './rulebook.module.css';

const SPEAKS_WORDS = { 'in-force': '', coming: 'Not yet in force. ', ended: 'No longer in force. ' } as const;

/** Rules by line and position, each as one sentence with its paper. */
export function RulesList({ list: { rules, total } }: { list: RuleList }) {
  if (rules.length === 0) {
    return (
      <EmptyView title="No rule found">
        <p>Look for a part number, a position or a paper, or choose another line.</p>
      </EmptyView>
    );
  }
  return (
    <>
      {total > rules.length ? (
        <p>
          The first {rules.length} of {total}. Choose a line or look for a word to see fewer.
        </p>
      ) : null}
      <ul className={classes.list}>
        {rules.map((rule) => (
          <li key={`${rule.key} ${rule.version}`}>
            <p>
              <span className={classes.speaks}>{SPEAKS_WORDS[rule.speaks]}</span>
              <Said>{rule.sentence}</Said>
            </p>
            <p className="soft">
              <span className="num">{rule.key}</span> by <Said>{`${rule.paper}; in force ${rule.inForce}.`}</Said>{' '}
              <Link to="/wall-chart/$line" params={{ line: rule.line }} hash={rule.positions[0]}>
                In the picture
              </Link>
            </p>
          </li>
        ))}
      </ul>
    </>
  );
}
