import { Button, TextInput } from '@mantine/core';
import { useMutation } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import { recoveryCodes, type RecoveryCodes, type SecondFactorView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { request, send } from '../../lib/api-client';
import classes from './own-sign-in.module.css';

interface ChangeProps {
  readonly what: 'renew' | 'off';
  readonly view: SecondFactorView;
  readonly onCodes: (codes: RecoveryCodes) => void;
  readonly onDone: () => void;
  readonly onBack: () => void;
}

/** New recovery codes, or no second factor any more: each asks for a code. */
export function SecondFactorChange({ what, view, onCodes, onDone, onBack }: ChangeProps) {
  const [password, setPassword] = useState('');
  const [code, setCode] = useState('');
  const change = useMutation({
    mutationFn: async () => {
      if (what === 'renew')
        return onCodes(await request(recoveryCodes, 'POST', `${PATH}/recovery-codes`, { body: { code } }));
      await send('POST', `${PATH}/off`, { body: { password, code } });
      onDone();
    },
    onError: () => setCode(''),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    change.mutate();
  };
  return (
    <form onSubmit={submit} className={classes.narrow}>
      {what === 'off' && view.hasPassword ? (
        <TextInput
          label="Your password"
          type="password"
          value={password}
          onChange={(event) => setPassword(event.currentTarget.value)}
          autoComplete="current-password"
          required
        />
      ) : null}
      <TextInput
        label="Code the app shows"
        description={what === 'off' ? 'Or a recovery code.' : 'The old recovery codes then work no more.'}
        value={code}
        onChange={(event) => setCode(event.currentTarget.value)}
        autoComplete="one-time-code"
        classNames={{ input: 'num' }}
        required
      />
      <ActProblem error={change.error} />
      <div className={classes.acts}>
        <Button type="submit" variant="filled" loading={change.isPending}>
          {what === 'off' ? 'Turn it off' : 'Make new ones'}
        </Button>
        <Button onClick={onBack}>Leave it</Button>
      </div>
    </form>
  );
}

const PATH = '/session/second-factor';
