import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { OtherReadings, type OtherReading } from '../../components/other-readings';
import { useMay } from '../../lib/session';
import { identityOf } from './identity-of';
import { useUnitAct } from './ticket-query';

/**
 * Other readings of the unit's numbers. Taking one of its serial keeps it, on the history of the ticket; a vehicle
 * number is set aside with a reason and entered anew.
 */
export function SerialOtherwise({ ticket }: { ticket: TicketView }) {
  const act = useUnitAct(ticket.id);
  const may = useMay('identify-unit') && ticket.closedAt === null;
  const take = ({ kind, serial }: OtherReading) =>
    kind === 'serial-scheme'
      ? () => act.mutate({ method: 'PUT', path: '/identity', body: { ...identityOf(ticket.unit), serial } })
      : null;
  if (!may) return null;
  return (
    <>
      <OtherReadings buildDates={ticket.unit.buildDates} onTake={take} busy={act.isPending} />
      <ActProblem error={act.error} />
    </>
  );
}
