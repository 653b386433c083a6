import { Button } from '@mantine/core';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { PartNumber } from '../../components/part-number';
import { VerdictMark } from '../../components/verdict-mark';
import { sayDayText } from '../../lib/say';
import { useTicketAct } from './ticket-query';
import classes from './parts-panel.module.css';

/** Spares the owner was given with earlier tickets, judged by the papers of today. */
export function OwnerSpares({ ticket, open }: { ticket: TicketView; open: boolean }) {
  const act = useTicketAct(ticket.id);
  const spares = ticket.ownerSpares.filter((spare) => spare.ticketId !== ticket.id);
  if (spares.length === 0) return null;
  return (
    <>
      <h3>Spares the owner has</h3>
      <ul>
        {spares.map(({ pickId, part, quantity, givenOn, ticket: number, verdict }) => (
          <li key={pickId} className={classes.pick}>
            {verdict ? <VerdictMark verdict={verdict} /> : null}
            <span className={classes.part}>
              <span className="num">{quantity} ×</span> <PartNumber number={part.number} name={part.name} />
            </span>
            <span className="soft">
              {number}
              {givenOn ? `, ${sayDayText(givenOn)}` : ''}
            </span>
            {open ? (
              <Button
                variant="subtle"
                px="xs"
                loading={act.isPending}
                onClick={() => act.mutate({ method: 'POST', path: `/spares/${pickId}/take-back` })}
                aria-label={`The owner handed back ${part.number}`}
              >
                Handed back
              </Button>
            ) : null}
          </li>
        ))}
      </ul>
      <ActProblem error={act.error} />
    </>
  );
}
