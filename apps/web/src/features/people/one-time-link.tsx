import type { Invited } from '../../../../../libs/contracts';
import { ShownOnce } from '../../components/shown-once';
import { sayInstant } from '../../lib/say';

/** The link that was just made; it is shown this once. */
export function OneTimeLink({ invited: { person, link, until } }: { invited: Invited }) {
  return (
    <ShownOnce
      words={`Give this link to ${person.name}. It sets the password and works once, until ${sayInstant(until)}.`}
      secret={`${window.location.origin}${link}`}
      caution={`Whoever has it can sign in as ${person.login}.`}
    />
  );
}
