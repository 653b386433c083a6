import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { LINE_SECURITIES, type MailServerView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { Overtaken } from '../../components/overtaken';
import { PickOne } from '../../components/pick-one';
import { useFilled } from '../../lib/use-filled';
import { useSettleMailServer, useTryMail } from './mail-server-query';
import { SECURITY_WORDS, serverFrom, typedFrom, withSecurity, type TypedMailServer } from './typed-mail-server';
import classes from './settings.module.css';

/** Through which server e-mails to owners go, and a letter to see whether they arrive. */
export function MailServerForm({ settled }: { settled: MailServerView }) {
  const filled = useFilled(settled, typedFrom);
  const { typed, setTyped, version, overtakenBy } = filled;
  const settle = useSettleMailServer(version);
  const server = serverFrom(typed);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (server) settle.mutate({ server }, { onSuccess: filled.fill });
  };
  return (
    <>
      <form onSubmit={submit} className={classes.form}>
        <fieldset className={classes.part}>
          <legend>E-mails to owners</legend>
          <InForce settled={settled} />
          <ServerFields
            typed={typed}
            set={(part) => setTyped((now) => ({ ...now, ...part }))}
            password={settled.server?.password ?? 'none'}
          />
          <Overtaken filled={filled} error={settle.error} />
          {settle.isSuccess ? (
            <p role="status">
              {settle.data.server ? 'Kept. The next e-mail goes by it.' : 'No server is kept any more.'}
            </p>
          ) : null}
        </fieldset>
        <div className="bar">
          <Button
            type="submit"
            variant="filled"
            loading={settle.isPending}
            disabled={server === null || overtakenBy !== null}
          >
            Keep the mail server
          </Button>
          {settled.server ? (
            <Button
              loading={settle.isPending}
              disabled={overtakenBy !== null}
              onClick={() => settle.mutate({ server: null }, { onSuccess: filled.fill })}
            >
              Use none any more
            </Button>
          ) : null}
        </div>
      </form>
      {settled.server || settled.environment ? <Trial /> : null}
    </>
  );
}

/** Through which server e-mails go now, where that is not what stands below. */
function InForce({ settled: { server, environment } }: { settled: MailServerView }) {
  if (environment) {
    return (
      <p>
        <strong>
          E-mails go through {environment.server} now, from {environment.from}: the program was started so, by SMTP_URL
          and MAIL_FROM. That goes before what is settled here.
        </strong>
      </p>
    );
  }
  if (server?.password === 'lost') {
    return (
      <p>
        <strong>
          No e-mail goes out: the server&apos;s key was changed, and the password cannot be read any more.
        </strong>{' '}
        Type it anew.
      </p>
    );
  }
  return (
    <p>{server ? 'Callback letters by e-mail go through this server.' : 'No e-mail goes out until one is set up.'}</p>
  );
}

interface ServerFieldsProps {
  typed: TypedMailServer;
  set: (part: Partial<TypedMailServer>) => void;
  password: 'none' | 'kept' | 'lost';
}

function ServerFields({ typed, set, password }: ServerFieldsProps) {
  return (
    <div className={classes.wideFields}>
      <TextInput
        label="Mail server"
        placeholder="mail.example.org"
        value={typed.host}
        spellCheck={false}
        autoCapitalize="none"
        onChange={(event) => set({ host: event.currentTarget.value })}
      />
      <PickOne
        label="Private line"
        value={typed.security}
        all={LINE_SECURITIES}
        words={(one) => SECURITY_WORDS[one]}
        onPick={(security) => set(withSecurity(typed, security))}
      />
      <TextInput
        label="Port"
        inputMode="numeric"
        className={classes.short}
        value={typed.port}
        onChange={(event) => set({ port: event.currentTarget.value })}
      />
      <TextInput
        label="Name it asks for"
        description="Empty where it asks for none."
        value={typed.login}
        autoComplete="off"
        spellCheck={false}
        autoCapitalize="none"
        onChange={(event) => set({ login: event.currentTarget.value })}
      />
      <TextInput
        type="password"
        label="Its password"
        description={
          password === 'kept' ? 'One is kept and shown to nobody. Empty: it stays.' : 'It is shown to nobody again.'
        }
        value={typed.password}
        autoComplete="new-password"
        onChange={(event) => set({ password: event.currentTarget.value })}
      />
      <TextInput
        label="Sender's name"
        maxLength={100}
        value={typed.senderName}
        onChange={(event) => set({ senderName: event.currentTarget.value })}
      />
      <TextInput
        label="Sender's address"
        type="email"
        value={typed.senderAddress}
        onChange={(event) => set({ senderAddress: event.currentTarget.value })}
      />
    </div>
  );
}

function Trial() {
  const [to, setTo] = useState('');
  const tryOut = useTryMail();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    tryOut.mutate(to.trim());
  };
  return (
    <form onSubmit={submit} className={classes.form}>
      <fieldset className={classes.part}>
        <legend>A trial letter</legend>
        <TextInput
          label="To the address"
          description="It goes by what is kept, not by what is only typed above."
          type="email"
          value={to}
          onChange={(event) => setTo(event.currentTarget.value)}
        />
        <ActProblem error={tryOut.error} />
        {tryOut.data ? (
          <p role="status">{`${tryOut.data.server} has taken it. See whether it arrives at ${tryOut.data.to}.`}</p>
        ) : null}
      </fieldset>
      <div className="bar">
        <Button type="submit" loading={tryOut.isPending} disabled={to.trim() === ''}>
          Send a trial letter
        </Button>
      </div>
    </form>
  );
}
