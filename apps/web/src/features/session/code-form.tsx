import { Button, TextInput } from '@mantine/core';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import { me } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { request } from '../../lib/api-client';
import { changePerson } from '../../lib/session';
import classes from './sign-in-form.module.css';

/** The second step of signing in: the code of the app, or a recovery code. `onBack` leads to the first step. */
export function CodeForm({ onDone, onBack }: { onDone?: () => void; onBack: () => void }) {
  const client = useQueryClient();
  const [code, setCode] = useState('');
  const enter = useMutation({
    mutationFn: () => request(me, 'POST', '/session/code', { body: { code } }),
    onSuccess: (person) => {
      changePerson(client, person);
      onDone?.();
    },
    onError: () => setCode(''),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    enter.mutate();
  };
  return (
    <form onSubmit={submit} className={classes.tag}>
      <h1>Second step</h1>
      <p className="soft">Open the app that shows your codes.</p>
      <TextInput
        label="Code"
        description="Six digits of the app, or one of your recovery codes."
        value={code}
        onChange={(event) => setCode(event.currentTarget.value)}
        autoComplete="one-time-code"
        autoCapitalize="characters"
        classNames={{ input: 'num' }}
        autoFocus
        required
      />
      <ActProblem error={enter.error} />
      <Button type="submit" variant="filled" loading={enter.isPending} fullWidth mt="md">
        Sign in
      </Button>
      <Button variant="subtle" onClick={onBack} fullWidth>
        Back to the password
      </Button>
    </form>
  );
}
