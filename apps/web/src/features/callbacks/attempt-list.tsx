import type { CallbackView } from '../../../../../libs/contracts';
import { sayInstant } from '../../lib/say';
import { HOW_WORDS, OUTCOME_WORDS } from './callback-words';

/** What was tried so far. */
export function AttemptList({ attempts }: { attempts: CallbackView['attempts'] }) {
  if (attempts.length === 0) return <p className="soft">Nobody has tried yet.</p>;
  return (
    <ul>
      {attempts.map(({ at, by, how, outcome, note }) => (
        <li key={`${at} ${how}`}>
          {sayInstant(at)}: {HOW_WORDS[how].toLowerCase()}, {OUTCOME_WORDS[outcome].toLowerCase()}
          {note ? `; ${note}` : ''} <span className="soft">{by}</span>
        </li>
      ))}
    </ul>
  );
}
