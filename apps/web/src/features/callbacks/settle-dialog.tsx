import { NativeSelect } from '@mantine/core';
import { useState } from 'react';
import type { CallbackView, SettleCallback } from '../../../../../libs/contracts';
import { ReasonDialog } from '../../components/reason-dialog';
import { useCallbackAct } from './callbacks-query';
import { SETTLE_WORDS } from './callback-words';

/** How a callback ends; `booked` opens a ticket for the unit. */
export function SettleDialog({ callback, onClose }: { callback: CallbackView; onClose: () => void }) {
  const [outcome, setOutcome] = useState<SettleCallback['outcome']>('booked');
  const act = useCallbackAct(callback);
  const settle = (reason: string) =>
    act.mutate({ method: 'POST', path: '/settle', body: { outcome, reason } }, { onSuccess: onClose });
  return (
    <ReasonDialog
      open
      title={`How it ended: ${callback.owner.name}`}
      act={outcome === 'booked' ? 'Open the ticket' : 'Settle it'}
      label="What was said"
      busy={act.isPending}
      error={act.error}
      onClose={onClose}
      onReason={settle}
    >
      <NativeSelect
        label="Outcome"
        value={outcome}
        onChange={(event) => setOutcome(event.currentTarget.value as SettleCallback['outcome'])}
        data={Object.entries(SETTLE_WORDS).map(([value, label]) => ({ value, label }))}
      />
    </ReasonDialog>
  );
}
