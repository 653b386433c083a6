import { Button, TextInput } from '@mantine/core';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import { me } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { request } from '../../lib/api-client';
import { isCodeNeeded } from '../../lib/problem';
import { changePerson } from '../../lib/session';
import { CodeForm } from './code-form';
import { Door } from './door';
import classes from './sign-in-form.module.css';

/** What a one-time link opens: a password is set, and one is signed in. `onDone` leads away from the link. */
export function WelcomeForm({ token, onDone }: { token: string; onDone: () => void }) {
  const client = useQueryClient();
  const [password, setPassword] = useState('');
  const enter = useMutation({
    mutationFn: () => request(me, 'POST', '/session/link', { body: { token, password } }),
    onSuccess: (person) => {
      changePerson(client, person);
      onDone();
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    enter.mutate();
  };
  if (isCodeNeeded(enter.error)) {
    return (
      <Door>
        <CodeForm onDone={onDone} onBack={onDone} />
      </Door>
    );
  }
  return (
    <Door>
      <form onSubmit={submit} className={classes.tag}>
        <h1>Welcome</h1>
        <p className="soft">Set your password. The link that brought you here works once.</p>
        <TextInput
          label="New password"
          description="At least 15 characters; a few words nobody would expect are easy to remember."
          type="password"
          value={password}
          onChange={(event) => setPassword(event.currentTarget.value)}
          autoComplete="new-password"
          required
        />
        <ActProblem error={enter.error} />
        <Button type="submit" variant="filled" loading={enter.isPending} fullWidth mt="md">
          Set it and sign in
        </Button>
      </form>
    </Door>
  );
}
