import type { PlaceView, TicketView } from '../../../../../libs/contracts';
import { VerdictMark } from '../../components/verdict-mark';
import { sayDayText } from '../../lib/say';
import { PhotosHere } from './photos-here';
import { PlaceEntry } from './place-entry';
import { PlaceSaid } from './place-said';
import { verdictOf, type Side } from './place-record';
import { VerdictChain } from './verdict-chain';
import classes from './places-panel.module.css';

interface PlaceRowProps {
  ticket: TicketView;
  place: PlaceView;
  /** the side that can be written now */
  open: Side | null;
}

/** One place: its verdict's shape, its name, what was found in it and what was left in it. */
export function PlaceRow({ ticket, place, open }: PlaceRowProps) {
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
      <PhotosHere ticket={ticket} position={place.position} place={place.place} />
      {verdict ? <VerdictChain ticket={ticket} place={place} /> : null}
    </li>
  );
}
