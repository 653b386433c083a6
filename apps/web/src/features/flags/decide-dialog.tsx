import { useState } from 'react';
import { DayField } from '../../components/day-field';
import type { DecideFlag, FlagView } from '../../../../../libs/contracts';
import { ReasonDialog } from '../../components/reason-dialog';
import { count } from '../../lib/say';
import { useDecide } from './flags-query';
import { Said } from '../../components/said';

export type Decision = DecideFlag['decision'];

interface DecideDialogProps {
  decision: Decision;
  on: readonly FlagView[];
  onClose: () => void;
}

const WORDS: Record<Decision, { title: string; act: string }> = {
  accept: { title: 'Accept', act: 'Accept' },
  'send-back': { title: 'Send back to the bench', act: 'Send back' },
  callback: { title: 'Order a callback', act: 'Order the callback' },
};

/** A manager's decision with its reason; an acceptance may end on a day. */
export function DecideDialog({ decision, on, onClose }: DecideDialogProps) {
  const [until, setUntil] = useState('');
  const decide = useDecide();
  const send = (reason: string) =>
    decide.mutate({ on, decision: { decision, reason, until: until || null } }, { onSuccess: onClose });
  return (
    <ReasonDialog
      open
      title={`${WORDS[decision].title}: ${count(on.length, 'flag')}`}
      act={WORDS[decision].act}
      busy={decide.isPending}
      error={decide.error}
      onClose={onClose}
      onReason={send}
    >
      <ul>
        {on.slice(0, 5).map((flag) => (
          <li key={flag.id}>
            <span className="num">{flag.ticket.number}</span> <Said>{flag.sentence}</Said>
          </li>
        ))}
      </ul>
      {on.length > 5 ? <p>and {on.length - 5} more</p> : null}
      {decision === 'accept' ? (
        <DayField
          label="Accepted until"
          description="Leave it empty when there is no end."

          value={until}
          onChange={(day) => setUntil(day)}
        />
      ) : null}
    </ReasonDialog>
  );
}
