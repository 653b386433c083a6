import { Button, Checkbox, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import {
  WEBHOOK_EVENTS,
  WEBHOOK_EVENT_TYPES,
  type WebhookEventType,
  type WebhookList,
  type WebhookView,
} from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { EmptyView } from '../../components/empty-view';
import { count } from '../../lib/say';
import { Deliveries } from './deliveries';
import { useAddWebhook, useChangeWebhook, useRemoveWebhook, useTryWebhook } from './programs-query';
import classes from './programs.module.css';
import { ShownOnce } from './shown-once';
import { TickChoices } from './tick-choices';

/** The addresses that are told of events, and a form for one more. */
export function Webhooks({ webhooks }: { webhooks: WebhookList }) {
  return (
    <>
      <AddWebhook />
      {webhooks.length === 0 ? (
        <EmptyView title="Nobody is told">
          <p>An address that you add is told of what you ticked, with ids alone and nothing about a person.</p>
        </EmptyView>
      ) : (
        <ul>
          {webhooks.map((webhook) => (
            <Webhook key={webhook.id} webhook={webhook} />
          ))}
        </ul>
      )}
    </>
  );
}

function AddWebhook() {
  const [url, setUrl] = useState('');
  const [events, setEvents] = useState<readonly WebhookEventType[]>(WEBHOOK_EVENT_TYPES);
  const add = useAddWebhook();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    add.mutate({ url, events: [...events] }, { onSuccess: () => setUrl('') });
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <TextInput
        label="Address"
        description="It starts with https:// and must be a public one, unless this server's settings name its host."
        type="url"
        value={url}
        onChange={(event) => setUrl(event.currentTarget.value)}
        required
      />
      <TickChoices
        legend="What it is told of"
        choices={WEBHOOK_EVENT_TYPES}
        says={(type) => WEBHOOK_EVENTS[type]}
        chosen={events}
        onChange={setEvents}
      />
      <div>
        <Button type="submit" variant="filled" loading={add.isPending} disabled={events.length === 0}>
          Add the address
        </Button>
      </div>
      <ActProblem error={add.error} />
      {add.data ? (
        <ShownOnce
          words="Give this to the receiver, which tells by it that an event came from here."
          secret={add.data.secret}
        />
      ) : null}
    </form>
  );
}

function Webhook({ webhook }: { webhook: WebhookView }) {
  const [shown, setShown] = useState(false);
  const [sure, setSure] = useState(false);
  const change = useChangeWebhook(webhook);
  const remove = useRemoveWebhook(webhook);
  const trial = useTryWebhook(webhook);
  const { url, events, active, waiting, setAside } = webhook;
  return (
    <li className={classes.row}>
      <div>
        <strong>{url}</strong>
        <br />
        {events.join(', ')}
        <br />
        <span className="soft">
          {count(waiting, 'event')} on the way{setAside > 0 ? `, ${setAside} set aside` : ''}.
        </span>
      </div>
      <Checkbox
        label="Is told"
        aria-label={`${url} is told`}
        checked={active}
        disabled={change.isPending}
        onChange={(event) => change.mutate({ active: event.currentTarget.checked })}
      />
      <div className={`${classes.wide} ${classes.acts}`}>
        <Button onClick={() => trial.mutate(undefined, { onSuccess: () => setShown(true) })} loading={trial.isPending}>
          Send a trial event
        </Button>
        <Button onClick={() => setShown(!shown)} aria-expanded={shown}>
          {shown ? 'Hide its events' : 'Show its events'}
        </Button>
        <Button
          color={sure ? 'danger' : undefined}
          onClick={() => (sure ? remove.mutate() : setSure(true))}
          onBlur={() => setSure(false)}
          loading={remove.isPending}
        >
          {sure ? 'Remove it with its events' : 'Remove'}
        </Button>
      </div>
      <div className={classes.wide}>
        <ActProblem error={change.error ?? trial.error ?? remove.error} />
        {shown ? <Deliveries webhook={webhook} /> : null}
      </div>
    </li>
  );
}
