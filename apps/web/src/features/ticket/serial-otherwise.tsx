import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { OtherReadings } from '../../components/other-readings';
import { useMay } from '../../lib/session';
import { identityOf } from './identity-of';
import { useUnitAct } from './ticket-query';

/** Other readings of the unit's serial; taking one keeps it as the unit's serial, on the history of the ticket. */
export function SerialOtherwise({ ticket }: { ticket: TicketView }) {
  const act = useUnitAct(ticket.id);
  const may = useMay('identify-unit') && ticket.closedAt === null;
  const take = (serial: string) =>
    act.mutate({ method: 'PUT', path: '/identity', body: { ...identityOf(ticket.unit), serial } });
  if (!may) return null;
  return (
    <>
      <OtherReadings buildDates={ticket.unit.buildDates} onTake={take} busy={act.isPending} />
      <ActProblem error={act.error} />
    </>
  );
}
