import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { PersonalData } from '../../../../../libs/contracts';
import { address } from '../../lib/api-client';
import { sayDayText, sayInstantDay } from '../../lib/say';
import classes from './owner.module.css';

/** Everything that is kept of one person, in words the person can read. */
export function OwnerRecord({ data }: { data: PersonalData }) {
  return (
    <>
      <Person owner={data.owner} />
      <h2>Machines</h2>
      <Rows of={data.units}>
        {({ id, name, serial }) => (
          <Link to="/units/$id" params={{ id }}>
            {name || 'Unit not identified'}, <span className="num">{serial ?? 'no serial'}</span>
          </Link>
        )}
      </Rows>
      <h2>Tickets</h2>
      <Rows of={data.tickets}>
        {(ticket) => (
          <>
            <Link to="/tickets/$id" params={{ id: ticket.id }} className="num">
              {ticket.number}
            </Link>{' '}
            {ticket.unit}, {saySpanOf(ticket)}. {ticket.complaint || 'No complaint written down.'}
            {ticket.authorisation ? ` ${sayYes(ticket.authorisation)}` : ''}
            <Photos of={ticket.photos} />
          </>
        )}
      </Rows>
      <h2>Calls</h2>
      <Rows of={data.callbacks}>{(call) => <Call call={call} />}</Rows>
    </>
  );
}

function Photos({ of }: { of: PersonalData['tickets'][number]['photos'] }) {
  if (of.length === 0) return null;
  return (
    <ul>
      {of.map(({ name, takenOn, stage, caption }) => (
        <li key={name}>
          <a href={address(`/photos/${name}`)} download>
            Photo of {sayDayText(takenOn)}
          </a>
          , at {stage}
          {caption ? `: ${caption}` : ''}
        </li>
      ))}
    </ul>
  );
}

function Person({ owner }: { owner: PersonalData['owner'] }) {
  const facts = [
    ['Name', owner.name],
    ['Phone', owner.phone],
    ['E-mail', owner.email],
    ['Address', owner.address],
    ['May be called when an answer changes', owner.consent ? 'yes' : 'no'],
    ['Kept at', owner.location],
  ] as const;
  return (
    <>
      {owner.erasedAt ? (
        <p role="status">What was known of this owner was erased on {sayInstantDay(owner.erasedAt)}.</p>
      ) : null}
      <dl className={classes.facts}>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value || 'not kept'}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}

function Call({ call }: { call: PersonalData['callbacks'][number] }) {
  return (
    <>
      {call.urgent ? 'Stop use, ' : ''}
      {call.unit}, {saySpanOf(call)}: {call.state}
      <ul>
        {call.attempts.map(({ on, how, outcome, note }, index) => (
          <li key={index}>
            {sayDayText(on)}, {how}: {outcome.replace(/-/g, ' ')}
            {note ? `. ${note}` : ''}
          </li>
        ))}
        {call.mails.map(({ on, to, subject, text, state }, index) => (
          <li key={`mail ${index}`}>
            {sayDayText(on)}, e-mail to {to} ({state}): {subject}
            {text ? <p className={classes.mail}>{text}</p> : null}
          </li>
        ))}
      </ul>
    </>
  );
}

function Rows<T extends { id: number }>({ of, children }: { of: readonly T[]; children: (row: T) => ReactNode }) {
  if (of.length === 0) return <p className="soft">None.</p>;
  return (
    <ul className={classes.rows}>
      {of.map((row) => (
        <li key={row.id}>{children(row)}</li>
      ))}
    </ul>
  );
}

const saySpanOf = ({ openedOn, closedOn }: { openedOn: string; closedOn: string | null }): string =>
  `${sayDayText(openedOn)} to ${closedOn ? sayDayText(closedOn) : 'today, still open'}`;

const sayYes = ({ by, how }: { by: string; how: string }): string => `${by} said yes to the work (${how}).`;
