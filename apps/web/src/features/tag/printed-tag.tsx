import type { TicketView } from '../../../../../libs/contracts';
import { unitName } from '../../../../../libs/papers';
import { sayDayText } from '../../lib/say';
import { TagCode } from './tag-code';
import classes from './printed-tag.module.css';

/** The tag that hangs on the unit, at the size of the label: black on white, readable from where one stands. */
export function PrintedTag({ ticket }: { ticket: TicketView }) {
  const { unit, owner, bench } = ticket;
  return (
    <article className={classes.tag}>
      <header className={classes.head}>
        <h1 className={classes.number}>{ticket.number}</h1>
        <p className={classes.bench}>{bench?.code ?? 'no bench'}</p>
      </header>
      <div className={classes.words}>
        <p className={classes.unit}>{unitName(unit)}</p>
        <p className={classes.line}>
          Serial{' '}
          <span className={classes.serial}>{unit.serial ?? (unit.serialAbsent ? 'absent' : 'not recorded')}</span>
        </p>
        <div className={classes.who}>
          <p className={classes.line}>
            <strong>{owner.name}</strong>
          </p>
          <p>{ticket.promisedOn ? `Promised ${sayDayText(ticket.promisedOn)}` : 'No day promised'}</p>
        </div>
        <p className={classes.complaint}>{ticket.complaint || 'No complaint written down.'}</p>
      </div>
      <TagCode number={ticket.number} />
    </article>
  );
}
