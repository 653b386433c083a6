import { Button, TextInput } from '@mantine/core';
import { useMutation } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import { ActProblem } from '../../components/act-problem';
import { send } from '../../lib/api-client';
import classes from './own-sign-in.module.css';

/** Changes one's own password, which ends every other sign-in of oneself. */
export function OwnPasswordForm() {
  const [current, setCurrent] = useState('');
  const [next, setNext] = useState('');
  const change = useMutation({
    mutationFn: () => send('POST', '/session/password', { body: { current, next } }),
    onSuccess: () => (setCurrent(''), setNext('')),
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    change.mutate();
  };
  return (
    <form onSubmit={submit} className={classes.narrow}>
      <TextInput
        label="Present password"
        type="password"
        value={current}
        onChange={(event) => setCurrent(event.currentTarget.value)}
        autoComplete="current-password"
        required
      />
      <TextInput
        label="New password"
        description="At least 15 characters."
        type="password"
        value={next}
        onChange={(event) => setNext(event.currentTarget.value)}
        autoComplete="new-password"
        required
      />
      <ActProblem error={change.error} />
      {change.isSuccess ? <p role="status">The password is changed; other devices are signed out.</p> : null}
      <Button type="submit" variant="filled" loading={change.isPending}>
        Change the password
      </Button>
    </form>
  );
}
