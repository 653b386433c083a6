import { Button } from '@mantine/core';
import { useState } from 'react';
import type { TicketView } from '../../../../../libs/contracts';
import { ReasonDialog } from '../../components/reason-dialog';
import { count } from '../../lib/say';
import { useMay } from '../../lib/session';
import { placeRecord } from './place-record';
import { useTicketAct } from './ticket-query';

/** Leaves out, with one reason, every place that nobody has looked at yet. */
export function LeaveOutRest({ ticket }: { ticket: TicketView }) {
  const [asking, setAsking] = useState(false);
  const act = useTicketAct(ticket.id);
  const may = useMay('record-places');
  const rest = ticket.places.filter(({ found }) => found === null);
  if (!may || ticket.stage !== 'inspection' || ticket.onHold !== null || rest.length === 0) return null;
  const leaveOut = (leftOutWhy: string) => {
    const places = rest.map((place) => placeRecord(place, 'found', { leftOutWhy }));
    act.mutate(
      { method: 'PUT', path: '/places', body: { side: 'found', places } },
      { onSuccess: () => setAsking(false) },
    );
  };
  return (
    <>
      <Button onClick={() => setAsking(true)}>{`Leave out the ${count(rest.length, 'place')} not looked at`}</Button>
      {asking ? (
        <ReasonDialog
          open
          title={`Leave out ${count(rest.length, 'place')}`}
          act="Leave them out"
          busy={act.isPending}
          error={act.error}
          onClose={() => setAsking(false)}
          onReason={leaveOut}
        />
      ) : null}
    </>
  );
}
