import { Link } from '@tanstack/react-router';
import type { UnitVisit } from '../../../../../libs/contracts';
import { EvidencePicture } from '../../components/evidence-picture';
import { WarrantyNote } from '../../components/warranty-note';
import { UnitNotes } from '../../components/unit-notes';
import { count, sayDayText, sayInstantDay } from '../../lib/say';
import { useVisitAct } from './unit-query';
import { Said } from '../../components/said';
import classes from './unit.module.css';

/** What a unit is greeted with: a call that is open, notes that waited for it, its history, its evidence. */
export function VisitGreeting({ visit }: { visit: UnitVisit }) {
  const { here, callback, notes, settledNotes, earlierTickets, unit } = visit;
  const act = useVisitAct(unit.id);
  return (
    <>
      {callback ? (
        <p className={classes.call} data-urgent={callback.urgent}>
          <strong>{callback.urgent ? 'Stop use, the owner is to be called:' : 'The owner is to be called:'}</strong>{' '}
          <Said>{callback.say}</Said> <Link to="/callbacks">To the callbacks</Link>
        </p>
      ) : null}
      <UnitNotes
        notes={notes}
        words="Noted for the next visit:"
        busy={act.isPending}
        error={act.error}
        onSettle={
          here
            ? (noteId, reason, onSuccess) =>
                act.mutate({ method: 'POST', path: `/notes/${noteId}/settle`, body: { reason } }, { onSuccess })
            : null
        }
      />
      {!callback && notes.length === 0 ? <p className="soft">Nothing waits for this unit.</p> : null}
      <SettledNotes notes={settledNotes} />
      <VisitWarranty visit={visit} />
      <h2 className={classes.part}>Evidence so far</h2>
      <p>
        <Said>{unit.buildDates.sentence}</Said>
      </p>
      {unit.buildDates.evidence.length > 0 ? <EvidencePicture buildDates={unit.buildDates} boundaries={[]} /> : null}
      <h2 className={classes.part}>Its tickets</h2>
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

function VisitWarranty({ visit: { here, touched, unit } }: { visit: UnitVisit }) {
  const act = useVisitAct(unit.id);
  return (
    <>
      <h2 className={classes.part}>Warranty</h2>
      <WarrantyNote
        unit={unit}
        touched={touched}
        busy={act.isPending}
        error={act.error}
        onSet={
          here
            ? (body, version, onSuccess) =>
                act.mutate({ method: 'PUT', path: '/warranty', body, version }, { onSuccess })
            : null
        }
      />
      {here ? null : (
        <p className="soft">This unit is of another location; what becomes of it is written down there.</p>
      )}
    </>
  );
}

function SettledNotes({ notes }: { notes: UnitVisit['settledNotes'] }) {
  if (notes.length === 0) return null;
  return (
    <details>
      <summary>{count(notes.length, 'note')} settled by hand</summary>
      <ul>
        {notes.map(({ id, where, sentence, source, why, by, at }) => (
          <li key={id}>
            <strong>{where}.</strong> <Said>{sentence}</Said> <span className="soft">{source}</span>
            <br />
            <strong>{`${why}: ${by ?? 'somebody'}, ${sayInstantDay(at)}`}</strong>
          </li>
        ))}
      </ul>
    </details>
  );
}
