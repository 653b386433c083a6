import type { Board } from '../../../../../libs/contracts';
import { STAGE_WORDS } from '../../lib/say';
import { TicketTag } from './ticket-tag';
import classes from './board.module.css';

/** The five stages as columns of tags; a column that holds more than it shows says so. */
export function StageColumns({ stages }: { stages: Board['stages'] }) {
  return (
    <div className={classes.columns}>
      {stages.map(({ stage, count, tickets }) => (
        <section key={stage} aria-labelledby={`stage-${stage}`} className={classes.column}>
          <h2 id={`stage-${stage}`} className={classes.stage}>
            {STAGE_WORDS[stage]} <span className="num">{count}</span>
          </h2>
          {tickets.length === 0 ? <p className="soft">Nothing here.</p> : null}
          <ul>
            {tickets.map((ticket) => (
              <li key={ticket.id}>
                <TicketTag ticket={ticket} />
              </li>
            ))}
          </ul>
          {count > tickets.length ? (
            <p className="soft">{count - tickets.length} more; narrow the board to see them.</p>
          ) : null}
        </section>
      ))}
    </div>
  );
}
