import { Checkbox } from '@mantine/core';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { Caution } from '../../components/caution';
import { useMay } from '../../lib/session';
import { useTicketAct } from './ticket-query';

/** The safety points, ticked before anything is fitted. */
export function SafetyPanel({ ticket }: { ticket: TicketView }) {
  const act = useTicketAct(ticket.id);
  const may = useMay('tick-safety') && ticket.closedAt === null;
  const ticked = ticket.safety.filter((point) => point.ticked).map(({ id }) => id);
  const tick = (id: string, on: boolean) =>
    act.mutate({
      method: 'PUT',
      path: '/safety',
      body: { checks: on ? [...ticked, id] : ticked.filter((one) => one !== id) },
    });
  return (
    <>
      <Caution>The maker&apos;s papers, local rules and a licensed technician come first.</Caution>
      <ul>
        {ticket.safety.map(({ id, sentence, ticked: on }) => (
          <li key={id}>
            <Checkbox
              label={sentence}
              checked={on}
              disabled={!may || act.isPending}
              onChange={(event) => tick(id, event.currentTarget.checked)}
            />
          </li>
        ))}
      </ul>
      <ActProblem error={act.error} />
    </>
  );
}
