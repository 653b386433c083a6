import { Button, TextInput } from '@mantine/core';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import { demoPeople, me, type DemoPeople } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { request } from '../../lib/api-client';
import { isCodeNeeded } from '../../lib/problem';
import { changePerson } from '../../lib/session';
import { CodeForm } from './code-form';
import { DemoPeopleList } from './demo-people-list';
import { Door } from './door';
import { ElsewhereButton } from './elsewhere-button';
import classes from './sign-in-form.module.css';

/** The door: name and password, then a code where there is a second factor; a demo shop also names its people. */
export function SignInForm() {
  const client = useQueryClient();
  const [login, setLogin] = useState('');
  const [password, setPassword] = useState('');
  const people = useQuery({
    queryKey: ['demo-people'],
    queryFn: (): Promise<DemoPeople> => request(demoPeople, 'GET', '/session/demo'),
  });
  const signIn = useMutation({
    mutationFn: () => request(me, 'POST', '/session', { body: { login, password } }),
    onSuccess: (person) => {
      changePerson(client, person);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    signIn.mutate();
  };
  if (isCodeNeeded(signIn.error)) return <SecondStep onBack={() => (setPassword(''), signIn.reset())} />;
  return (
    <Door>
      <form onSubmit={submit} className={classes.tag}>
        <h1>Revright</h1>
        <p className="soft">Which part is right for this build date, as known today.</p>
        <TextInput
          label="Sign-in name"
          value={login}
          onChange={(event) => setLogin(event.currentTarget.value)}
          autoComplete="username"
          autoCapitalize="none"
          required
        />
        <TextInput
          label="Password"
          type="password"
          value={password}
          onChange={(event) => setPassword(event.currentTarget.value)}
          autoComplete="current-password"
          required
        />
        <ActProblem error={signIn.error} />
        <Button type="submit" variant="filled" loading={signIn.isPending} fullWidth mt="md">
          Sign in
        </Button>
        <ElsewhereButton />
      </form>
      {people.data && people.data.length > 0 ? <DemoPeopleList people={people.data} onPick={setLogin} /> : null}
    </Door>
  );
}

function SecondStep({ onBack }: { onBack: () => void }) {
  return (
    <Door>
      <CodeForm onBack={onBack} />
    </Door>
  );
}
