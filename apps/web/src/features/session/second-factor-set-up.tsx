import { Button, TextInput } from '@mantine/core';
import { useMutation } from '@tanstack/react-query';
import { lazy, Suspense, useState, type FormEvent } from 'react';
import {
  recoveryCodes,
  secondFactorBegun,
  type RecoveryCodes,
  type SecondFactorBegun,
  type SecondFactorView,
} from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { LoadingView } from '../../components/loading-view';
import { request } from '../../lib/api-client';
import classes from './own-sign-in.module.css';

const Picture = lazy(() => import('./second-factor-picture').then((one) => ({ default: one.SecondFactorPicture })));

interface SetUpProps {
  readonly view: SecondFactorView;
  readonly onCodes: (codes: RecoveryCodes) => void;
  readonly onBack: () => void;
}

/** First the password, then the picture for the app, then a first code from it. */
export function SecondFactorSetUp({ view, onCodes, onBack }: SetUpProps) {
  const [password, setPassword] = useState('');
  const begin = useMutation({
    mutationFn: () => request(secondFactorBegun, 'POST', '/session/second-factor', { body: { password } }),
  });
  if (begin.data) return <FirstCode begun={begin.data} onCodes={onCodes} onBack={onBack} />;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    begin.mutate();
  };
  return (
    <form onSubmit={submit} className={classes.narrow}>
      <p>You need an app that shows one-time codes, on a phone or in a password safe.</p>
      {view.hasPassword ? (
        <TextInput
          label="Your password"
          type="password"
          value={password}
          onChange={(event) => setPassword(event.currentTarget.value)}
          autoComplete="current-password"
          required
        />
      ) : null}
      <ActProblem error={begin.error} />
      <div className={classes.acts}>
        <Button type="submit" variant="filled" loading={begin.isPending}>
          Go on
        </Button>
        <Button onClick={onBack}>Leave it</Button>
      </div>
    </form>
  );
}

function FirstCode({ begun, onCodes, onBack }: Omit<SetUpProps, 'view'> & { begun: SecondFactorBegun }) {
  const [code, setCode] = useState('');
  const turnOn = useMutation({
    mutationFn: () => request(recoveryCodes, 'POST', '/session/second-factor/on', { body: { code } }),
    onSuccess: onCodes,
    onError: () => setCode(''),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    turnOn.mutate();
  };
  return (
    <form onSubmit={submit} className={classes.narrow}>
      <p>Let the app read this picture.</p>
      <Suspense fallback={<LoadingView what="the picture" />}>
        <Picture address={begun.address} />
      </Suspense>
      <p>Or type this key into it:</p>
      <code className={classes.key}>{begun.secret.replaceAll(/(.{4})(?=.)/g, '$1 ')}</code>
      <TextInput
        label="Code the app shows"
        description="Six digits. A new one comes every half minute."
        value={code}
        onChange={(event) => setCode(event.currentTarget.value)}
        autoComplete="one-time-code"
        inputMode="numeric"
        classNames={{ input: 'num' }}
        required
      />
      <ActProblem error={turnOn.error} />
      <div className={classes.acts}>
        <Button type="submit" variant="filled" loading={turnOn.isPending}>
          Turn it on
        </Button>
        <Button onClick={onBack}>Leave it</Button>
      </div>
    </form>
  );
}
