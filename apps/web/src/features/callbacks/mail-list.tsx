import type { CallbackView } from '../../../../../libs/contracts';
import { sayInstant } from '../../lib/say';
import { MAIL_WORDS } from './callback-words';

/** What became of each e-mail. */
export function MailList({ mails }: { mails: CallbackView['mails'] }) {
  return (
    <ul>
      {mails.map(({ at, state, problem }) => (
        <li key={at}>
          {sayInstant(at)}: {MAIL_WORDS[state]}
          {problem ? <span className="soft"> {problem}</span> : null}
        </li>
      ))}
    </ul>
  );
}
