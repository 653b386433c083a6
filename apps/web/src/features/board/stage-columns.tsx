import { useRef, useState } from 'react';
import { STAGE_NAMES, type Board, type StageName, type TicketCard } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { ReasonDialog } from '../../components/reason-dialog';
import { useDrop } from '../../lib/drag';
import { STAGE_WORDS } from '../../lib/say';
import { useMay } from '../../lib/session';
import { useStageMove, type StageMove } from './move-stage';
import { TicketTag } from './ticket-tag';
import classes from './board.module.css';

/**
 * The five stages as columns of tags; a column that holds more than it shows says so. A tag can be dragged to the stage
 * before or after its own: a shortcut for the button on its page, whose gate the server asks all the same.
 */
export function StageColumns({ stages }: { stages: Board['stages'] }) {
  const act = useStageMove();
  const may = useMay('move-ticket');
  const [back, setBack] = useState<StageMove | null>(null);
  const cards = stages.flatMap(({ tickets }) => tickets);
  const drop = (to: StageName) => (id: number) => {
    const card = cards.find((one) => one.id === id);
    if (!card || card.stage === to) return;
    act.reset();
    if (isBack(card, to)) setBack({ card, to });
    else act.mutate({ card, to });
  };
  return (
    <>
      {back ? null : <ActProblem error={act.error} />}
      <div className={classes.columns}>
        {stages.map((column) => (
          <StageColumn key={column.stage} column={column} onDrop={may ? drop(column.stage) : null} />
        ))}
      </div>
      <ReasonDialog
        key={back?.card.id}
        title={back ? `${back.card.number} back to ${STAGE_WORDS[back.to].toLowerCase()}` : ''}
        act="Move it back"
        open={back !== null}
        busy={act.isPending}
        error={act.error}
        onClose={() => setBack(null)}
        onReason={(reason) => back && act.mutate({ ...back, reason }, { onSuccess: () => setBack(null) })}
      />
    </>
  );
}

const isBack = ({ stage }: TicketCard, to: StageName) => STAGE_NAMES.indexOf(to) < STAGE_NAMES.indexOf(stage);

interface StageColumnProps {
  column: Board['stages'][number];
  onDrop: ((id: number) => void) | null;
}

function StageColumn({ column: { stage, count, tickets }, onDrop }: StageColumnProps) {
  const column = useRef<HTMLElement>(null);
  const over = useDrop(column, 'stage-ticket', onDrop);
  return (
    <section ref={column} aria-labelledby={`stage-${stage}`} className={classes.column} data-over={over !== null}>
      <h2 id={`stage-${stage}`} className={classes.stage}>
        {STAGE_WORDS[stage]} <span className="num">{count}</span>
      </h2>
      {tickets.length === 0 ? <p className="soft">Nothing here.</p> : null}
      <ul>
        {tickets.map((ticket) => (
          <li key={ticket.id}>
            <TicketTag ticket={ticket} drags={onDrop !== null} />
          </li>
        ))}
      </ul>
      {count > tickets.length ? (
        <p className="soft">{count - tickets.length} more; narrow the board to see them.</p>
      ) : null}
    </section>
  );
}
