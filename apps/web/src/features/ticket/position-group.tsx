import type { PlaceView, TicketView } from '../../../../../libs/contracts';
import { RulingWhy } from '../../components/ruling-why';
import type { Side } from './place-record';
import { PlaceRow } from './place-row';
import { rulingWords } from '../../lib/ruling-words';
import { Said } from '../../components/said';
import classes from './places-panel.module.css';

interface PositionGroupProps {
  number: number;
  ticket: TicketView;
  position: TicketView['positions'][number];
  places: readonly PlaceView[];
  /** the side that can be written now */
  open: Side | null;
}

/** One position: its number on the sketch, its ruling in a line, and its places. */
export function PositionGroup({ number, ticket, position, places, open }: PositionGroupProps) {
  const ruling = ticket.rulings.find((one) => one.position === position.code);
  return (
    <li id={`position-${position.code}`} className={classes.position}>
      <div className={classes.head}>
        <span className={classes.dot}>{number}</span>
        <h3>
          {position.name} <span className="soft">{position.assembly}</span>
        </h3>
      </div>
      {ruling ? (
        <details className={classes.ruling}>
          <summary>
            <span>
              <Said>{rulingWords(ruling)}</Said>
            </span>
          </summary>
          <RulingWhy ruling={ruling} />
        </details>
      ) : null}
      <ul>
        {places.map((place) => (
          <PlaceRow key={place.place} ticket={ticket} place={place} open={open} />
        ))}
      </ul>
    </li>
  );
}
