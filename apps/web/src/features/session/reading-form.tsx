import { Button, Checkbox } from '@mantine/core';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import { me, type Me, type Reading } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { ReadingFields } from '../../components/reading-fields';
import { request } from '../../lib/api-client';
import { knowPerson } from '../../lib/session';
import classes from './own-sign-in.module.css';

/** How the page writes days, numbers, torques and lengths for the person: as the shop does, or in their own manner. */
export function ReadingForm({ person }: { person: Me }) {
  const [own, setOwn] = useState(person.ownReading !== null);
  const [typed, setTyped] = useState(person.reading);
  const client = useQueryClient();
  const keep = useMutation<Me, Error, Reading | null>({
    mutationFn: (reading) => request(me, 'PUT', '/session/reading', { body: { reading } }),
    onSuccess: (answer) => {
      knowPerson(client, answer);
    },
  });
  const submit = (event: FormEvent) => {
    event.preventDefault();
    keep.mutate(own ? typed : null);
  };
  return (
    <form onSubmit={submit} className={classes.narrow}>
      <Checkbox
        label="As the shop writes them"
        checked={!own}
        onChange={(event) => setOwn(!event.currentTarget.checked)}
      />
      {own ? <ReadingFields reading={typed} onChange={setTyped} /> : null}
      <ActProblem error={keep.error} />
      {keep.isSuccess ? <p role="status">Kept. Every page shows them this way from now on.</p> : null}
      <Button type="submit" variant="filled" loading={keep.isPending}>
        Keep days, numbers and units
      </Button>
    </form>
  );
}
