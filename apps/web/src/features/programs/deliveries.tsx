import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { WEBHOOK_EVENTS, type WebhookDelivery, type WebhookView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { QueryView } from '../../components/query-view';
import { capital, count, sayInstant } from '../../lib/say';
import { deliveriesQuery, useDeliverAgain } from './programs-query';
import classes from './programs.module.css';

/** What happened, in words; a try that a person sent off happened to nobody and goes by its name. */
const sayType = (type: string): string =>
  type in WEBHOOK_EVENTS ? capital(WEBHOOK_EVENTS[type as keyof typeof WEBHOOK_EVENTS]) : type;

/** The last events for one address; those set aside stand first. */
export function Deliveries({ webhook }: { webhook: WebhookView }) {
  const again = useDeliverAgain(webhook);
  return (
    <QueryView query={useQuery(deliveriesQuery(webhook))} what="its events">
      {(events) => (
        <>
          {events.length === 0 ? <p className="soft">Nothing has happened yet.</p> : null}
          <ul className={classes.events}>
            {events.map((event) => (
              <li key={event.id} className={classes.event}>
                <div>
                  <strong>{sayType(event.type)}</strong> <span className="num soft">{event.eventId}</span>{' '}
                  <span className="soft">{sayInstant(event.at)}</span>
                  <br />
                  {standingOf(event)}
                </div>
                {event.state === 'delivered' || event.state === 'set-aside' ? (
                  <Button
                    onClick={() => again.mutate(event.id)}
                    loading={again.isPending && again.variables === event.id}
                    aria-label={`Send ${event.eventId} again`}
                  >
                    Send again
                  </Button>
                ) : null}
              </li>
            ))}
          </ul>
          <ActProblem error={again.error} />
        </>
      )}
    </QueryView>
  );
}

function standingOf({ state, tries, nextTryAt, status, problem, endedAt }: WebhookDelivery): string {
  const why = problem ?? '';
  if (state === 'delivered') return `Taken with ${status}${endedAt === null ? '' : `, ${sayInstant(endedAt)}`}.`;
  if (state === 'set-aside') return `Set aside after ${count(tries, 'try', 'tries')}. ${why}`;
  if (state === 'sending') return 'Being sent.';
  if (tries === 0) return 'Waits to be sent.';
  return `${why} Tried ${count(tries, 'time')}${nextTryAt === null ? '' : `, next ${sayInstant(nextTryAt)}`}.`;
}
