import { Button } from '@mantine/core';
import type { TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { sayInstant, sayMoney } from '../../lib/say';
import { useMay } from '../../lib/session';
import { EstimateTable } from './estimate-table';
import { useTicketAct } from './ticket-query';
import classes from './labour-panel.module.css';

/** The estimate as it stands, the button that writes it down, and every revision that was. */
export function EstimateRevisions({ ticket }: { ticket: TicketView }) {
  const { estimate, currency } = ticket;
  const act = useTicketAct(ticket.id);
  const may = useMay('write-estimates') && ticket.closedAt === null;
  const newest = estimate.revisions[0];
  const next = (newest?.revision ?? 0) + 1;
  return (
    <>
      {estimate.lines.length === 0 ? (
        <p className="soft">Nothing is picked and no labour written down yet.</p>
      ) : (
        <EstimateTable estimate={{ ...estimate, currency }} caption="The estimate as it stands" />
      )}
      {may && estimate.differs && estimate.lines.length > 0 ? (
        <div className={classes.acts}>
          <Button loading={act.isPending} onClick={() => act.mutate({ method: 'POST', path: '/estimates' })}>
            {`Write the estimate down as revision ${next}`}
          </Button>
          {newest ? <span className="soft">{`Revision ${newest.revision} says something else.`}</span> : null}
        </div>
      ) : null}
      <ActProblem error={act.error} />
      <ul className={classes.revisions}>
        {estimate.revisions.map((one) => (
          <li key={one.revision}>
            <details>
              <summary>
                Revision {one.revision}: <strong>{sayMoney(one.totalMinor, one.currency)}</strong>{' '}
                <span className="soft">{`${sayInstant(one.at)}${one.by ? `, ${one.by}` : ''}`}</span>
              </summary>
              <EstimateTable estimate={one} caption={`Revision ${one.revision} of the estimate`} />
            </details>
          </li>
        ))}
      </ul>
    </>
  );
}
