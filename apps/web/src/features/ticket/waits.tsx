import { Button } from '@mantine/core';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { PartNumber } from '../../components/part-number';
import { sayInstantDay } from '../../lib/say';
import { useTicketAct } from './ticket-query';
import classes from './parts-panel.module.css';

/** Parts the ticket waits for, and those that have come in meanwhile. */
export function Waits({ ticket, open }: { ticket: TicketView; open: boolean }) {
  const act = useTicketAct(ticket.id);
  if (ticket.waits.length === 0) return null;
  return (
    <>
      <h3>Waiting for parts</h3>
      <ul>
        {ticket.waits.map(({ id, part, pieces, since, wokenAt }) => (
          <li key={id} className={classes.pick}>
            <span className={classes.part}>
              <span className="num">{pieces} ×</span> <PartNumber number={part.number} name={part.name} />
            </span>
            {wokenAt === null ? (
              <span>since {sayInstantDay(since)}</span>
            ) : (
              <strong>came in on {sayInstantDay(wokenAt)}</strong>
            )}
            {open ? (
              <Button
                variant="subtle"
                px="xs"
                loading={act.isPending}
                onClick={() => act.mutate({ method: 'DELETE', path: `/waits/${id}` })}
                aria-label={`Wait no longer for ${part.number}`}
              >
                Wait no longer
              </Button>
            ) : null}
          </li>
        ))}
      </ul>
      <ActProblem error={act.error} />
    </>
  );
}
