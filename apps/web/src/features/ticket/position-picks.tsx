import type { PartRef, TicketView } from '../../../../../libs/contracts';
import { RulingWhy } from '../../components/ruling-why';
import { rulingWords } from '../../lib/ruling-words';
import { barredBy } from './barred-by';
import { BarredHere } from './barred-here';
import { PickForm } from './pick-form';
import { PickRow } from './pick-row';
import { ShelfLine } from './shelf-line';
import { Said } from '../../components/said';
import classes from './parts-panel.module.css';

interface PositionPicksProps {
  ticket: TicketView;
  position: TicketView['positions'][number];
  /** whether parts can be picked now */
  open: boolean;
}

/** One position: its ruling in a line, what is picked for it, and the way to pick. */
export function PositionPicks({ ticket, position, open }: PositionPicksProps) {
  const ruling = ticket.rulings.find((one) => one.position === position.code);
  const barred = ruling ? barredBy([ruling]) : [];
  const picks = ticket.picks.filter((pick) => pick.position === position.code && pick.purpose === 'fit');
  const required = ruling?.settled ? (ruling.pieces[0]?.required ?? null) : null;
  return (
    <li className={classes.position}>
      <h3>
        {position.name} <span className="soft">{position.places > 1 ? `${position.places} places` : ''}</span>
      </h3>
      {ruling ? (
        <details>
          <summary>
            <span>
              <Said>{rulingWords(ruling)}</Said>
            </span>
          </summary>
          <RulingWhy ruling={ruling} />
        </details>
      ) : (
        <p className="soft">No paper says anything here.</p>
      )}
      <BarredHere barred={barred} warranty={ticket.unit.warranty} />
      <ShelfLine ticket={ticket} parts={ruling ? partsOf(ruling) : []} />
      <ul>
        {picks.map((pick) => (
          <PickRow key={pick.id} ticket={ticket} pick={pick} open={open} />
        ))}
      </ul>
      {open ? (
        <PickForm
          ticket={ticket}
          position={position.code}
          suggested={required}
          most={position.places}
          barred={barred}
        />
      ) : null}
    </li>
  );
}

/** The parts that are required or allowed for the unit, each once. */
function partsOf({ pieces }: TicketView['rulings'][number]): PartRef[] {
  const all = pieces.flatMap(({ required, allowed }) => (required ? [required, ...allowed] : allowed));
  return [...new Map(all.map((part) => [part.key, part])).values()];
}
