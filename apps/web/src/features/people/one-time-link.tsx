import type { Invited } from '../../../../../libs/contracts';
import { sayInstant } from '../../lib/say';
import classes from './people.module.css';

/** The link that was just made; it is shown this once. */
export function OneTimeLink({ invited: { person, link, until } }: { invited: Invited }) {
  return (
    <div className={classes.link} role="status">
      <p>
        Give this link to {person.name}. It sets the password and works once, until {sayInstant(until)}.
      </p>
      <code className={classes.address}>{`${window.location.origin}${link}`}</code>
      <p className="soft">It is shown here only now. Whoever has it can sign in as {person.login}.</p>
    </div>
  );
}
