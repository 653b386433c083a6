import type { TicketView } from '../../../../../libs/contracts';
import { STAGE_WORDS } from '../../lib/say';
import classes from './stage-strip.module.css';

/** The five stages as a strip of words, each with how much its gate still asks for. */
export function StageStrip({ ticket }: { ticket: TicketView }) {
  return (
    <ol className={classes.strip} aria-label="Stages">
      {ticket.missing.map(({ stage, points }) => (
        <li
          key={stage}
          aria-current={stage === ticket.stage && !ticket.handedOver ? 'step' : undefined}
          className={classes.stage}
        >
          <span>{STAGE_WORDS[stage]}</span>
          <span className={classes.missing}>
            {points.length === 0 ? (
              'complete'
            ) : (
              <>
                <span className="num">{points.length}</span> missing
              </>
            )}
          </span>
        </li>
      ))}
    </ol>
  );
}
