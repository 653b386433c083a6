import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { STAGE_NAMES, type TicketView } from '../../../../../libs/contracts';
import { ReasonDialog } from '../../components/reason-dialog';
import { STAGE_WORDS } from '../../lib/say';
import { useMay } from '../../lib/session';
import { useTicketAct, type TicketAct } from './ticket-query';
import classes from './ticket-acts.module.css';

interface AskedAct {
  title: string;
  words: string;
  /** the change, given the reason for it */
  act: (reason: string) => TicketAct;
  danger?: boolean;
}

const HOLD: AskedAct = {
  title: 'Put on hold',
  words: 'Put on hold',
  act: (reason) => ({ method: 'POST', path: '/hold', body: { reason } }),
};
const CANCEL: AskedAct = {
  title: 'Cancel the ticket',
  words: 'Cancel the ticket',
  act: (reason) => ({ method: 'POST', path: '/cancel', body: { reason } }),
  danger: true,
};

function backFrom({ stage }: TicketView): AskedAct | null {
  const to = STAGE_NAMES[STAGE_NAMES.indexOf(stage) - 1];
  if (!to) return null;
  const title = `Back to ${STAGE_WORDS[to].toLowerCase()}`;
  return { title, words: 'Send it back', act: (reason) => ({ method: 'POST', path: '/stage', body: { to, reason } }) };
}

/** Back a stage, hold, resume, cancel: each but resuming asks for a reason. And the tag and the sheet to print. */
export function TicketActs({ ticket }: { ticket: TicketView }) {
  const [asked, setAsked] = useState<AskedAct | null>(null);
  const act = useTicketAct(ticket.id);
  const mayMove = useMay('move-ticket');
  const mayHold = useMay('hold-ticket');
  const mayCancel = useMay('cancel-ticket');
  const open = ticket.closedAt === null;
  const back = backFrom(ticket);
  const resume = () => act.mutate({ method: 'POST', path: '/hold', body: { reason: null } });
  return (
    <div className={classes.acts}>
      {open && back && mayMove ? <Button onClick={() => setAsked(back)}>Back a stage</Button> : null}
      {open && mayHold && ticket.onHold === null ? <Button onClick={() => setAsked(HOLD)}>Hold</Button> : null}
      {open && mayHold && ticket.onHold !== null ? <Button onClick={resume}>Take off hold</Button> : null}
      {open && mayCancel ? (
        <Button color="danger" onClick={() => setAsked(CANCEL)}>
          Cancel
        </Button>
      ) : null}
      <Button component={Link} to={`/tickets/${ticket.id}/tag`}>
        Print the tag
      </Button>
      <Button component={Link} to={`/tickets/${ticket.id}/sheet`}>
        Sheet
      </Button>
      {asked ? (
        <ReasonDialog
          open
          title={asked.title}
          act={asked.words}
          danger={asked.danger}
          busy={act.isPending}
          error={act.error}
          onClose={() => setAsked(null)}
          onReason={(reason) => act.mutate(asked.act(reason), { onSuccess: () => setAsked(null) })}
        />
      ) : null}
    </div>
  );
}
