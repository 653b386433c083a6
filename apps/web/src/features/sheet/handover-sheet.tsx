import type { TicketView } from '../../../../../libs/contracts';
import { Caution } from '../../components/caution';
import { TouchedList } from '../../components/touched-list';
import { sayInstantDay, sayMoney } from '../../lib/say';
import {
  consentWords,
  OWNERS_CAUTION,
  photoWords,
  sheetLines,
  sheetPhotos,
  unitName,
  warrantyWords,
} from '../../../../../libs/papers';
import { Said } from '../../components/said';
import classes from './handover-sheet.module.css';

/** The sheet for the owner: found, fitted, why, spares, cautions, and the word on being called. */
export function HandoverSheet({ ticket }: { ticket: TicketView }) {
  const { unit, owner } = ticket;
  const lines = sheetLines(ticket);
  const spares = ticket.picks.filter(({ purpose, state }) => purpose === 'spare' && state !== 'returned');
  const accepted = ticket.flags.filter(({ state }) => state === 'accepted');
  return (
    <article className={classes.sheet}>
      <SheetHead ticket={ticket} />
      <p>
        <strong>{unitName(unit)}</strong>, serial{' '}
        <span className="num">{unit.serial ?? `not readable (${unit.serialAbsent ?? 'no reason given'})`}</span>.{' '}
        <Said>{unit.buildDates.sentence}</Said>
      </p>
      {ticket.complaint ? <p>You told us: {ticket.complaint}</p> : null}
      <h2>What was found and what was fitted</h2>
      {lines.length === 0 ? (
        <p>Every place that was looked at holds the right part; nothing was changed.</p>
      ) : (
        <Lines lines={lines} />
      )}
      <SheetPhotos ticket={ticket} />
      <h2>Spares handed to you</h2>
      {spares.length === 0 ? <p>None.</p> : null}
      <ul>
        {spares.map(({ id, quantity, part }) => (
          <li key={id}>
            {quantity} × <span className="num">{part.number}</span> {part.name}
          </li>
        ))}
      </ul>
      <SheetWarranty ticket={ticket} />
      {accepted.length > 0 ? <h2>Accepted by the manager</h2> : null}
      <ul>
        {accepted.map(({ id, sentence, decision }) => (
          <li key={id}>
            <Said>{sentence}</Said> {decision?.why}
          </li>
        ))}
      </ul>
      <p>
        Parts and labour: <strong>{sayMoney(ticket.totalMinor, ticket.currency)}</strong>.
      </p>
      <Caution>{OWNERS_CAUTION}</Caution>
      <p>{consentWords(owner.consent)}</p>
      <p className={classes.sign}>Received by</p>
    </article>
  );
}

function SheetWarranty({ ticket }: { ticket: TicketView }) {
  const words = warrantyWords(ticket);
  if (!words) return null;
  return (
    <>
      <h2>Warranty</h2>
      <p>
        <Said>{words.sentence}</Said>
      </p>
      {words.touched.length > 0 ? <p>Fitted while it runs:</p> : null}
      <TouchedList touched={words.touched} />
    </>
  );
}

/** The photos that were chosen for the owner; what each shows stands under it. */
function SheetPhotos({ ticket }: { ticket: TicketView }) {
  const chosen = sheetPhotos(ticket);
  if (chosen.length === 0) return null;
  const words = (photo: TicketView['photos'][number]) => photoWords(ticket, photo);
  return (
    <div className={classes.photos}>
      {chosen.map((photo) => (
        <figure key={photo.id}>
          <img src={`/api/photos/${photo.name}`} alt={words(photo)} />
          <figcaption>{words(photo)}</figcaption>
        </figure>
      ))}
    </div>
  );
}

function SheetHead({ ticket }: { ticket: TicketView }) {
  const { owner } = ticket;
  return (
    <header className={classes.head}>
      <div>
        <h1>{ticket.number}</h1>
        <p>{ticket.closedAt ? `Handed over ${sayInstantDay(ticket.closedAt)}` : 'Not handed over yet'}</p>
      </div>
      <div>
        <p>
          <strong>{owner.name}</strong>
        </p>
        <p>{owner.address}</p>
        <p>{owner.phone}</p>
      </div>
    </header>
  );
}

function Lines({ lines }: { lines: ReturnType<typeof sheetLines> }) {
  return (
    <table>
      <thead>
        <tr>
          <th>Place</th>
          <th>Found</th>
          <th>Fitted</th>
          <th>Why</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.key}>
            <td data-head="Place">
              <strong>{line.place}</strong>
            </td>
            <td data-head="Found">
              <span className="num">{line.found}</span>
            </td>
            <td data-head="Fitted">
              <span className="num">{line.fitted}</span>
            </td>
            <td data-head="Why">
              <span>
                <Said>{line.why}</Said>
              </span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
