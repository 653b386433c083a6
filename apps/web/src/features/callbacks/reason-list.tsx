import type { CallbackView } from '../../../../../libs/contracts';
import { withoutVerdictWord } from '../../lib/verdict-words';
import { VerdictMark } from '../../components/verdict-mark';
import { Said } from '../../components/said';

/** Each paper and place that made the call needed; a withdrawn one says why it no longer counts. */
export function ReasonList({ reasons }: { reasons: CallbackView['reasons'] }) {
  return (
    <ul>
      {reasons.map((reason) => (
        <li key={`${reason.source} ${reason.position} ${reason.placeName}`}>
          <p>
            <VerdictMark verdict={reason.verdict} /> <Said>{withoutVerdictWord(reason.sentence, reason.verdict)}</Said>{' '}
            <span className="soft">By {reason.source}.</span>
            {reason.withdrawn ? <strong> No longer: {reason.withdrawn.why}</strong> : null}
          </p>
        </li>
      ))}
    </ul>
  );
}
