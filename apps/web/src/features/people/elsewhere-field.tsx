import { Button, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import type { PersonView } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { useSetElsewhere } from './people-query';
import classes from './people.module.css';

/** As whom a person may sign in with the other provider. */
export function ElsewhereField({ person, provider }: { person: PersonView; provider: string }) {
  const known = person.elsewhere?.email ?? '';
  const [email, setEmail] = useState(known);
  const set = useSetElsewhere(person);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    set.mutate({ email: email.trim() === '' ? null : email.trim() });
  };
  return (
    <form onSubmit={submit} className={`${classes.wide} ${classes.acts}`}>
      <TextInput
        label={`E-mail at ${provider}`}
        aria-label={`E-mail of ${person.name} at ${provider}`}
        description={person.elsewhere?.bound ? 'Bound to an account there.' : undefined}
        type="email"
        value={email}
        onChange={(event) => setEmail(event.currentTarget.value)}
      />
      {email.trim().toLowerCase() === known ? null : (
        <Button type="submit" loading={set.isPending} className={classes.beside}>
          Keep it
        </Button>
      )}
      <ActProblem error={set.error} />
    </form>
  );
}
