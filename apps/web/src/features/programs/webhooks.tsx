import { Button, Checkbox, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import {
  WEBHOOK_EVENTS,
  WEBHOOK_EVENT_TYPES,
  type WebhookAdded,
  type WebhookEventType,
  type WebhookList,
  type WebhookView,
} from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { EmptyView } from '../../components/empty-view';
import { ShownOnce } from '../../components/shown-once';
import { capital, count } from '../../lib/say';
import { Deliveries } from './deliveries';
import { useAddWebhook, useChangeWebhook, useRemoveWebhook, useRenewSecret, useTryWebhook } from './programs-query';
import classes from './programs.module.css';
import { TickChoices } from './tick-choices';

const SECRET_WORDS = 'Give this to the receiver, which tells by it that an event came from here.';

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
        called={(type) => capital(WEBHOOK_EVENTS[type])}
        chosen={events}
        onChange={setEvents}
      />
      <div>
        <Button type="submit" variant="filled" loading={add.isPending} disabled={events.length === 0}>
          Add the address
        </Button>
      </div>
      <ActProblem error={add.error} />
      {add.data ? <ShownOnce words={SECRET_WORDS} secret={add.data.secret} /> : null}
    </form>
  );
}

function Webhook({ webhook }: { webhook: WebhookView }) {
  const [shown, setShown] = useState(false);
  const [sure, setSure] = useState(false);
  const [secret, setSecret] = useState<string | null>(null);
  const change = useChangeWebhook(webhook);
  const remove = useRemoveWebhook(webhook);
  const trial = useTryWebhook(webhook);
  const { url, events, active, waiting, setAside } = webhook;
  return (
    <li className={classes.row}>
      <div>
        <strong>{url}</strong>
        <br />
        {capital(events.map((type) => WEBHOOK_EVENTS[type]).join(', '))}
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
        <RenewSecret webhook={webhook} onNew={setSecret} />
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
        {secret === null ? null : <ShownOnce words={SECRET_WORDS} secret={secret} />}
        {shown ? <Deliveries webhook={webhook} /> : null}
      </div>
    </li>
  );
}

/** Asked twice: from that moment on the receiver refuses what comes, until it has been given the new one. */
function RenewSecret({ webhook, onNew }: { webhook: WebhookView; onNew: (secret: string) => void }) {
  const [sure, setSure] = useState(false);
  const renew = useRenewSecret(webhook);
  const done = { onSuccess: ({ secret }: WebhookAdded) => (setSure(false), onNew(secret)) };
  return (
    <>
      <Button
        color={sure ? 'danger' : undefined}
        onClick={() => (sure ? renew.mutate(undefined, done) : setSure(true))}
        onBlur={() => setSure(false)}
        loading={renew.isPending}
      >
        {sure ? 'Renew it: the one before signs nothing any more' : 'Renew the secret'}
      </Button>
      <ActProblem error={renew.error} />
    </>
  );
}
