import type { TicketView } from '../../../../../libs/contracts';
import { Caution } from '../../components/caution';
import { sayInstantDay, sayMoney } from '../../lib/say';
import { sheetLines } from './sheet-lines';
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
        <strong>{[unit.makerName, unit.lineName, unit.modelNumber].filter(Boolean).join(' ')}</strong>, serial{' '}
        <span className="num">{unit.serial ?? `not readable (${unit.serialAbsent ?? 'no reason given'})`}</span>.{' '}
        {unit.buildDates.sentence}
      </p>
      {ticket.complaint ? <p>You told us: {ticket.complaint}</p> : null}
      <h2>What was found and what was fitted</h2>
      {lines.length === 0 ? (
        <p>Every place that was looked at holds the right part; nothing was changed.</p>
      ) : (
        <Lines lines={lines} />
      )}
      <h2>Spares handed to you</h2>
      {spares.length === 0 ? <p>None.</p> : null}
      <ul>
        {spares.map(({ id, quantity, part }) => (
          <li key={id}>
            {quantity} × <span className="num">{part.number}</span> {part.name}
          </li>
        ))}
      </ul>
      {accepted.length > 0 ? <h2>Accepted by the manager</h2> : null}
      <ul>
        {accepted.map(({ id, sentence, decision }) => (
          <li key={id}>
            {sentence} {decision?.why}
          </li>
        ))}
      </ul>
      <p>
        Parts and labour: <strong>{sayMoney(ticket.totalMinor, ticket.currency)}</strong>.
      </p>
      <OwnersCaution />
      <p>
        {owner.consent
          ? 'You agreed that we call you when a later bulletin changes what is right for this unit.'
          : 'You have not agreed to be called when a later bulletin changes what is right for this unit.'}
      </p>
      <p className={classes.sign}>Received by</p>
    </article>
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

function OwnersCaution() {
  return (
    <Caution>
      Before you touch any part: stop the engine, take the key or the plug lead off, wait until everything is at rest,
      and release stored energy. Never fit a stronger fastener than the one required: it saves the pin and breaks the
      gearbox. The maker&apos;s papers, local rules and a licensed technician come first.
    </Caution>
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
            <td>{line.place}</td>
            <td className="num">{line.found}</td>
            <td className="num">{line.fitted}</td>
            <td>{line.why}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
