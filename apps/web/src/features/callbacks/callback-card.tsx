import { Button, Checkbox } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { CallbackView } from '../../../../../libs/contracts';
import { count, sayDayText, sayInstantDay, todayText } from '../../lib/say';
import { useMay } from '../../lib/session';
import { AttemptForm } from './attempt-form';
import { AttemptList } from './attempt-list';
import { WAY_WORDS } from './callback-words';
import { MailList } from './mail-list';
import { ReasonList } from './reason-list';
import { SettleDialog } from './settle-dialog';
import { Said } from '../../components/said';
import classes from './callbacks.module.css';

interface CallbackCardProps {
  callback: CallbackView;
  /** Whether it is among those to be written to in one go. */
  chosen: boolean;
  onChoose: (chosen: boolean) => void;
}

/** One owner to call: whom, about what, what to say, what was tried. */
export function CallbackCard({ callback, chosen, onChoose }: CallbackCardProps) {
  const [settling, setSettling] = useState(false);
  const mayWork = useMay('work-callbacks');
  const { owner, unit, lastTicket } = callback;
  const open = callback.state === 'open';
  return (
    <li className={classes.card} data-callback={callback.id} tabIndex={-1} aria-label={owner.name}>
      <div className={classes.who}>
        <h2>{owner.name}</h2>
        {open && mayWork ? (
          <Checkbox
            label="Write to this owner"
            aria-label={`Write to this owner: ${owner.name}, ${unit.name}`}
            checked={chosen}
            onChange={(event) => onChoose(event.currentTarget.checked)}
          />
        ) : null}
        {callback.urgent ? <strong className={classes.urgent}>Urgent: stop use</strong> : null}
        <WaysIn owner={owner} />
        <span>
          <Said>{unit.name}</Said> <span className="num">{unit.serial ?? ''}</span>
        </span>
        <span className="soft">Since {sayInstantDay(callback.openedAt)}</span>
        {open && callback.nextOn ? <NextTry on={callback.nextOn} /> : null}
        {lastTicket ? (
          <Link to="/tickets/$id" params={{ id: lastTicket.id }}>
            {lastTicket.number}
            {lastTicket.handedOverOn ? `, handed over ${sayDayText(lastTicket.handedOverOn)}` : ''}
          </Link>
        ) : null}
        {callback.ticketId ? (
          <Link to="/tickets/$id" params={{ id: callback.ticketId }}>
            The ticket that is booked
          </Link>
        ) : null}
      </div>
      <div>
        <blockquote className={classes.say}>
          <Said>{callback.say}</Said>
        </blockquote>
        {callback.closedWhy ? <p>{`Closed: ${callback.closedWhy}`}</p> : null}
        <details>
          <summary>{`Why: ${count(callback.reasons.length, 'reason')}`}</summary>
          <ReasonList reasons={callback.reasons} />
        </details>
        <AttemptList attempts={callback.attempts} />
        <MailList mails={callback.mails} />
        {open && mayWork ? (
          <>
            <AttemptForm callback={callback} />
            <Button variant="filled" onClick={() => setSettling(true)}>
              Book it in, or settle it
            </Button>
          </>
        ) : null}
      </div>
      {settling ? <SettleDialog callback={callback} onClose={() => setSettling(false)} /> : null}
    </li>
  );
}

/** The day that was agreed on, or that has gone by since. */
function NextTry({ on }: { on: string }) {
  const today = todayText();
  if (on < today) return <strong className={classes.late}>{`Was to be tried on ${sayDayText(on)}`}</strong>;
  return <strong>{on === today ? 'To be tried today' : `Next try ${sayDayText(on)}`}</strong>;
}

/** How the owner is reached, and what they do not want. */
function WaysIn({ owner }: { owner: CallbackView['owner'] }) {
  return (
    <>
      {owner.phone ? <a href={`tel:${owner.phone}`}>{owner.phone}</a> : <span className="soft">no phone</span>}
      {owner.email ? <span>{owner.email}</span> : null}
      {owner.address ? <span>{owner.address}</span> : null}
      {owner.consent ? null : <strong>Has not agreed to be called</strong>}
      {owner.declined.length > 0 ? (
        <strong>Does not want {owner.declined.map((way) => WAY_WORDS[way]).join(', ')}</strong>
      ) : null}
    </>
  );
}
