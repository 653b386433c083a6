import type { TicketView } from '../../../../../libs/contracts';
import { STAGE_WORDS } from '../../lib/say';
import { useArrival } from '../../lib/use-arrival';
import classes from './stage-strip.module.css';

/** The five stages as a strip of words, each with how much its gate still asks for. */
export function StageStrip({ ticket }: { ticket: TicketView }) {
  const present = useArrival<HTMLLIElement>(ticket.stage);
  return (
    <ol className={classes.strip} aria-label="Stages">
      {ticket.missing.map(({ stage, points }) => (
        <li
          key={stage}
          ref={stage === ticket.stage ? present : undefined}
          tabIndex={stage === ticket.stage ? -1 : undefined}
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
