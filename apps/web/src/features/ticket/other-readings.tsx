import { Button } from '@mantine/core';
import type { TicketView } from '../../../../../libs/contracts';
import { identityOf } from './identity-of';
import { useUnitAct } from './ticket-query';

/** Other readings of a serial that does not fit; one is taken only by a person's hand. */
export function OtherReadings({ ticket }: { ticket: TicketView }) {
  const act = useUnitAct(ticket.id);
  const readings = ticket.unit.buildDates.otherReadings;
  if (readings.length === 0) return null;
  const take = (serial: string) =>
    act.mutate({ method: 'PUT', path: '/identity', body: { ...identityOf(ticket.unit), serial } });
  return (
    <>
      <h3>Could the serial be read otherwise?</h3>
      <ul>
        {readings.map(({ serial, sentence }) => (
          <li key={serial}>
            <p>{sentence}</p>
            <Button onClick={() => take(serial)}>It reads {serial}</Button>
          </li>
        ))}
      </ul>
    </>
  );
}
