import { Link } from '@tanstack/react-router';
import type { UnitVisit } from '../../../../../libs/contracts';
import { EvidencePicture } from '../../components/evidence-picture';
import { sayDayText } from '../../lib/say';
import classes from './unit.module.css';

/** What a unit is greeted with: a call that is open, notes that waited for it, its history, its evidence. */
export function VisitGreeting({ visit }: { visit: UnitVisit }) {
  const { callback, notes, earlierTickets, unit } = visit;
  return (
    <>
      {callback ? (
        <p className={classes.call} data-urgent={callback.urgent}>
          <strong>{callback.urgent ? 'Stop use, the owner is to be called:' : 'The owner is to be called:'}</strong>{' '}
          {callback.say} <Link to="/callbacks">To the callbacks</Link>
        </p>
      ) : null}
      {notes.map(({ sentence, source, on }) => (
        <p key={`${source}-${sentence}`} className={classes.note}>
          <strong>Noted for the next visit:</strong> {sentence}{' '}
          <span className="soft">{`${source}, ${sayDayText(on)}`}</span>
        </p>
      ))}
      {!callback && notes.length === 0 ? <p className="soft">Nothing waits for this unit.</p> : null}
      <h2>Evidence so far</h2>
      <p>{unit.buildDates.sentence}</p>
      {unit.buildDates.evidence.length > 0 ? <EvidencePicture buildDates={unit.buildDates} boundaries={[]} /> : null}
      <h2>Its tickets</h2>
      {earlierTickets.length === 0 ? <p className="soft">It has not been here before.</p> : null}
      <ul>
        {earlierTickets.map(({ id, number, closedOn, complaint }) => (
          <li key={id} className={classes.ticket}>
            <Link to="/tickets/$id" params={{ id }} className="num">
              {number}
            </Link>
            <span className="soft">{closedOn ? sayDayText(closedOn) : 'open'}</span>
            <span>{complaint || 'No complaint written down.'}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
