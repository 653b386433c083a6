import type { TicketView } from '../../../../../libs/contracts';
import { Caution } from '../../components/caution';
import { EmptyView } from '../../components/empty-view';
import { count, sayMoney } from '../../lib/say';
import { useMay } from '../../lib/session';
import { barredBy } from './barred-by';
import { PickForm } from './pick-form';
import { PickRow } from './pick-row';
import { OwnerSpares } from './owner-spares';
import { PositionPicks } from './position-picks';
import { Waits } from './waits';
import { codesToWorkOn } from './to-work-on';
import classes from './parts-panel.module.css';

/** The positions to be worked on with their rulings and picks, the others folded away, then spares for the owner. */
export function PartsPanel({ ticket }: { ticket: TicketView }) {
  const may = useMay('pick-parts') && ticket.closedAt === null;
  const open = may && (ticket.stage === 'parts-selection' || ticket.stage === 'repair');
  if (ticket.positions.length === 0) return <EmptyView title="No positions yet: the product line is not known." />;
  const codes = codesToWorkOn(ticket);
  const wanted = ticket.positions.filter(({ code }) => codes.has(code));
  const others = ticket.positions.filter(({ code }) => !codes.has(code));
  const spares = ticket.picks.filter(({ purpose }) => purpose === 'spare');
  const picksOf = (position: TicketView['positions'][number]) => (
    <PositionPicks key={position.code} ticket={ticket} position={position} open={open} />
  );
  return (
    <>
      <Caution>The rule decides which part. Never fit a stronger fastener than the one required.</Caution>
      {wanted.length === 0 ? (
        <p className="soft">Nothing calls for work: no part is broken, missing or wrong.</p>
      ) : null}
      <ol>{wanted.map(picksOf)}</ol>
      {others.length > 0 ? (
        <details>
          <summary>{count(others.length, 'other position')}</summary>
          <ol>{others.map(picksOf)}</ol>
        </details>
      ) : null}
      <Waits ticket={ticket} open={may} />
      <h3>Spares for the owner</h3>
      <ul>
        {spares.map((pick) => (
          <PickRow key={pick.id} ticket={ticket} pick={pick} open={open} />
        ))}
      </ul>
      {open ? <PickForm ticket={ticket} position={null} suggested={null} barred={barredBy(ticket.rulings)} /> : null}
      <OwnerSpares ticket={ticket} open={may} />
      <p className={classes.total}>
        Parts and labour together: <strong>{sayMoney(ticket.totalMinor, ticket.currency)}</strong>
      </p>
    </>
  );
}
