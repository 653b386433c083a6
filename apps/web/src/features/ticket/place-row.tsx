import type { PlaceView, TicketView } from '../../../../../libs/contracts';
import { VerdictMark } from '../../components/verdict-mark';
import { sayDayText } from '../../lib/say';
import { useMay } from '../../lib/session';
import { PlaceEntry } from './place-entry';
import { PlaceSaid } from './place-said';
import { verdictOf, type Side } from './place-record';
import { VerdictChain } from './verdict-chain';
import classes from './places-panel.module.css';

/** Which side is open for entry at the present stage; null when none is. */
function openSide(ticket: TicketView): Side | null {
  if (ticket.closedAt !== null || ticket.onHold !== null) return null;
  if (ticket.stage === 'inspection' || ticket.stage === 'parts-selection') return 'found';
  return ticket.stage === 'repair' ? 'left' : null;
}

/** One place: its verdict's shape, its name, what was found in it and what was left in it. */
export function PlaceRow({ ticket, place }: { ticket: TicketView; place: PlaceView }) {
  const mayRecord = useMay('record-places');
  const open = mayRecord ? openSide(ticket) : null;
  const verdict = verdictOf(place);
  return (
    <li className={classes.place}>
      <div className={classes.name}>
        {verdict ? <VerdictMark verdict={verdict} shapeOnly /> : <span className={classes.blank} aria-hidden="true" />}
        <span>{place.placeName}</span>
      </div>
      <div className={classes.side}>
        <span className={classes.sideName}>As found</span>
        {open === 'found' ? (
          <PlaceEntry ticket={ticket} place={place} side="found" />
        ) : (
          <PlaceSaid side={place.found} />
        )}
        {place.before && !place.found ? (
          <p className="soft">
            Held <span className="num">{place.before.part?.number ?? 'nothing known'}</span> after {place.before.ticket}
            , {sayDayText(place.before.on)}.
          </p>
        ) : null}
      </div>
      {open === 'left' || place.left ? (
        <div className={classes.side}>
          <span className={classes.sideName}>As left</span>
          {open === 'left' ? <PlaceEntry ticket={ticket} place={place} side="left" /> : <PlaceSaid side={place.left} />}
        </div>
      ) : null}
      {verdict ? <VerdictChain ticket={ticket} place={place} /> : null}
    </li>
  );
}
