import { Link } from '@tanstack/react-router';
import type { FlagView, TicketView } from '../../../../../libs/contracts';
import { TorqueBar } from '../../components/torque-bar';
import { VerdictMark } from '../../components/verdict-mark';
import { sayDayText } from '../../lib/say';
import { withoutVerdictWord } from '../../lib/verdict-words';
import { Said } from '../../components/said';
import classes from './ticket-flags.module.css';

const STATE_WORDS = {
  open: 'waits for a manager',
  accepted: 'accepted',
  'sent-back': 'sent back to the bench',
  callback: 'callback ordered',
  cleared: 'cleared',
};

/** The flags on this ticket, open ones first, each with what was decided about it. */
export function TicketFlags({ ticket }: { ticket: TicketView }) {
  const order = [...ticket.flags].sort(
    (a, b) => Number(b.state === 'open') - Number(a.state === 'open') || b.severity - a.severity,
  );
  if (order.length === 0) return <p className="soft">No flags.</p>;
  return (
    <ul className={classes.flags}>
      {order.map((flag) => (
        <li key={flag.id}>
          <VerdictMark verdict={flag.verdict} />{' '}
          <strong>
            {flag.positionName}, {flag.placeName}.
          </strong>{' '}
          <Said>{withoutVerdictWord(flag.sentence, flag.verdict)}</Said> <Decision flag={flag} />
          {flag.strength ? (
            <details>
              <summary>
                <span>
                  <Said>{flag.strength.sentences[0] ?? 'Strength'}</Said>
                </span>
              </summary>
              <TorqueBar strength={flag.strength} />
            </details>
          ) : null}
        </li>
      ))}
      {order.some(({ state }) => state === 'open') ? (
        <li>
          <Link to="/flagged">To the manager&apos;s desk</Link>
        </li>
      ) : null}
    </ul>
  );
}

function Decision({ flag }: { flag: FlagView }) {
  const { decision } = flag;
  return (
    <span className="soft">
      {STATE_WORDS[flag.state]}
      {decision
        ? `${decision.by ? ` by ${decision.by}` : ''}: ${decision.why}${decision.until ? `, until ${sayDayText(decision.until)}` : ''}`
        : ''}
    </span>
  );
}
