import { Checkbox } from '@mantine/core';
import { useState } from 'react';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { Caution } from '../../components/caution';
import { useMay } from '../../lib/session';
import { useTicketAct } from './ticket-query';

/** The safety points, ticked before anything is fitted. */
export function SafetyPanel({ ticket }: { ticket: TicketView }) {
  const act = useTicketAct(ticket.id);
  const may = useMay('tick-safety') && ticket.closedAt === null;
  const kept = ticket.safety.filter((point) => point.ticked).map(({ id }) => id);
  // A tick is seen at once; until the last one sent is kept, what is wanted stands before what is kept.
  const [wanted, setWanted] = useState<readonly string[] | null>(null);
  const ticked = wanted ?? kept;
  const tick = (id: string, on: boolean) => {
    const checks = on ? [...ticked, id] : ticked.filter((one) => one !== id);
    setWanted(checks);
    const settle = () => setWanted((now) => (now === checks ? null : now));
    act.mutate({ method: 'PUT', path: '/safety', body: { checks } }, { onSettled: settle });
  };
  return (
    <>
      <Caution>The maker&apos;s papers, local rules and a licensed technician come first.</Caution>
      <ul>
        {ticket.safety.map(({ id, sentence }) => (
          <li key={id}>
            <Checkbox
              label={sentence}
              checked={ticked.includes(id)}
              disabled={!may}
              onChange={(event) => tick(id, event.currentTarget.checked)}
            />
          </li>
        ))}
      </ul>
      <ActProblem error={act.error} />
    </>
  );
}
