import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { STAGE_NAMES, type TicketView } from '../../../../../libs/contracts';
import { ReasonDialog } from '../../components/reason-dialog';
import { STAGE_WORDS } from '../../lib/say';
import { useMay } from '../../lib/session';
import { useTicketAct, type TicketAct } from './ticket-query';
import classes from './ticket-acts.module.css';

type Asked = 'back' | 'hold' | 'cancel';

/** Back a stage, hold, resume, cancel: each but resuming asks for a reason. And the sheet to print. */
export function TicketActs({ ticket }: { ticket: TicketView }) {
  const [asked, setAsked] = useState<Asked | null>(null);
  const act = useTicketAct(ticket.id);
  const mayMove = useMay('move-ticket');
  const mayHold = useMay('hold-ticket');
  const mayCancel = useMay('cancel-ticket');
  const closed = ticket.closedAt !== null;
  const before = STAGE_NAMES[STAGE_NAMES.indexOf(ticket.stage) - 1];
  const ask = (wanted: Asked) => {
    act.reset();
    setAsked(wanted);
  };
  const acts: Record<Asked, { title: string; words: string; send: (reason: string) => TicketAct }> = {
    back: {
      title: `Back to ${before ? STAGE_WORDS[before].toLowerCase() : ''}`,
      words: 'Send it back',
      send: (reason) => ({ method: 'POST', path: '/stage', body: { to: before, reason } }),
    },
    hold: {
      title: 'Put on hold',
      words: 'Put on hold',
      send: (reason) => ({ method: 'POST', path: '/hold', body: { reason } }),
    },
    cancel: {
      title: 'Cancel the ticket',
      words: 'Cancel the ticket',
      send: (reason) => ({ method: 'POST', path: '/cancel', body: { reason } }),
    },
  };
  return (
    <div className={classes.acts}>
      {!closed && before && mayMove ? <Button onClick={() => ask('back')}>Back a stage</Button> : null}
      {!closed && mayHold && ticket.onHold === null ? <Button onClick={() => ask('hold')}>Hold</Button> : null}
      {!closed && mayHold && ticket.onHold !== null ? (
        <Button onClick={() => act.mutate({ method: 'POST', path: '/hold', body: { reason: null } })}>
          Take off hold
        </Button>
      ) : null}
      {!closed && mayCancel ? (
        <Button color="danger" onClick={() => ask('cancel')}>
          Cancel
        </Button>
      ) : null}
      <Button component={Link} to={`/tickets/${ticket.id}/sheet`}>
        Sheet
      </Button>
      {asked ? (
        <ReasonDialog
          open
          title={acts[asked].title}
          act={acts[asked].words}
          danger={asked === 'cancel'}
          busy={act.isPending}
          error={act.error}
          onClose={() => setAsked(null)}
          onReason={(reason) => act.mutate(acts[asked].send(reason), { onSuccess: () => setAsked(null) })}
        />
      ) : null}
    </div>
  );
}
