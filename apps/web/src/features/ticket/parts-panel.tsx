import type { TicketView } from '../../../../../libs/contracts';
import { Caution } from '../../components/caution';
import { EmptyView } from '../../components/empty-view';
import { RulingWhy } from '../../components/ruling-why';
import { sayMoney } from '../../lib/say';
import { useMay } from '../../lib/session';
import { PickForm } from './pick-form';
import { PickRow } from './pick-row';
import classes from './parts-panel.module.css';

/** Per position the ruling and the parts picked for it, then spares for the owner. */
export function PartsPanel({ ticket }: { ticket: TicketView }) {
  const may = useMay('pick-parts') && ticket.closedAt === null;
  const open = may && (ticket.stage === 'parts-selection' || ticket.stage === 'repair');
  if (ticket.positions.length === 0) return <EmptyView title="No positions yet: the product line is not known." />;
  const spares = ticket.picks.filter(({ purpose }) => purpose === 'spare');
  return (
    <>
      <Caution>The rule decides which part. Never fit a stronger fastener than the one required.</Caution>
      <ol>
        {ticket.positions.map((position) => (
          <PositionPicks key={position.code} ticket={ticket} position={position} open={open} />
        ))}
      </ol>
      <h3>Spares for the owner</h3>
      <ul>
        {spares.map((pick) => (
          <PickRow key={pick.id} ticket={ticket} pick={pick} open={open} />
        ))}
      </ul>
      {open ? <PickForm ticket={ticket} position={null} suggested={null} /> : null}
      <p className={classes.total}>
        Parts and labour together: <strong>{sayMoney(ticket.totalMinor, ticket.currency)}</strong>
      </p>
    </>
  );
}

interface PositionPicksProps {
  ticket: TicketView;
  position: TicketView['positions'][number];
  open: boolean;
}

function PositionPicks({ ticket, position, open }: PositionPicksProps) {
  const ruling = ticket.rulings.find((one) => one.position === position.code);
  const picks = ticket.picks.filter((pick) => pick.position === position.code && pick.purpose === 'fit');
  const required = ruling?.settled ? (ruling.pieces[0]?.required ?? null) : null;
  return (
    <li className={classes.position}>
      <h3>
        {position.name} <span className="soft">{position.places > 1 ? `${position.places} places` : ''}</span>
      </h3>
      {ruling ? (
        <details>
          <summary>{ruling.sentence}</summary>
          <RulingWhy ruling={ruling} />
        </details>
      ) : (
        <p className="soft">No paper says anything here.</p>
      )}
      <ul>
        {picks.map((pick) => (
          <PickRow key={pick.id} ticket={ticket} pick={pick} open={open} />
        ))}
      </ul>
      {open ? <PickForm ticket={ticket} position={position.code} suggested={required} most={position.places} /> : null}
    </li>
  );
}
