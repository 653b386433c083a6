import { Button } from '@mantine/core';
import type { PickView, TicketView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { FitFindings } from '../../components/fit-findings';
import { PartNumber } from '../../components/part-number';
import { TorqueBar } from '../../components/torque-bar';
import { VerdictMark } from '../../components/verdict-mark';
import { sayMoney } from '../../lib/say';
import { useTicketAct } from './ticket-query';
import classes from './parts-panel.module.css';

const STATE_WORDS = { picked: 'picked', fitted: 'fitted', returned: 'back on the shelf', given: 'given to the owner' };

const FROM_WORDS = { shelf: '', owner: ', brought by the owner', bought: ', bought for this ticket' };

/** One picked part: its verdict, how many, what it costs, and the way back to the shelf. */
export function PickRow({ ticket, pick, open }: { ticket: TicketView; pick: PickView; open: boolean }) {
  const act = useTicketAct(ticket.id);
  const putBack = () => act.mutate({ method: 'POST', path: `/picks/${pick.id}/return` });
  return (
    <li className={classes.pick}>
      {pick.verdict ? <VerdictMark verdict={pick.verdict} /> : null}
      <span className={classes.part}>
        <span className="num">{pick.quantity} ×</span> <PartNumber number={pick.part.number} name={pick.part.name} />
      </span>
      <span>
        {pick.from !== 'shelf' && pick.state === 'returned' ? 'not used' : STATE_WORDS[pick.state]}
        {FROM_WORDS[pick.from]}
      </span>
      <span className="num">{sayMoney(pick.priceMinor, ticket.currency)}</span>
      {open && pick.state === 'picked' ? (
        <Button
          variant="subtle"
          px="xs"
          loading={act.isPending}
          onClick={putBack}
          aria-label={
            pick.from === 'shelf' ? `Put ${pick.part.number} back on the shelf` : `${pick.part.number} is not used`
          }
        >
          {pick.from === 'shelf' ? 'Back to the shelf' : 'Not used'}
        </Button>
      ) : null}
      {pick.exception ? (
        <p
          className={classes.exception}
        >{`Exception${pick.exception.by ? ` by ${pick.exception.by}` : ''}: ${pick.exception.reason}`}</p>
      ) : null}
      <div className={classes.strength}>
        <FitFindings fit={pick.fit} />
        {pick.strength ? (
          <details>
            <summary>{pick.strength.sentences[0]}</summary>
            <TorqueBar strength={pick.strength} />
          </details>
        ) : null}
      </div>
      <ActProblem error={act.error} />
    </li>
  );
}
