import { Button } from '@mantine/core';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect } from 'react';
import { me } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { LoadingView } from '../../components/loading-view';
import { request } from '../../lib/api-client';
import { isCodeNeeded } from '../../lib/problem';
import { changePerson } from '../../lib/session';
import { CodeForm } from './code-form';
import { Door } from './door';
import classes from './sign-in-form.module.css';

/** Where another provider sends the browser back to. `query` is what it came with; `onDone` leads away from here. */
export function FromElsewhere({ query, onDone }: { query: string; onDone: () => void }) {
  const client = useQueryClient();
  // Asked once for each answer of the provider, which is good once.
  const enter = useQuery({
    queryKey: ['from-elsewhere', query],
    queryFn: () => request(me, 'POST', '/session/elsewhere/back', { body: { query } }),
    staleTime: Infinity,
    retry: false,
  });
  const person = enter.data;
  useEffect(() => {
    if (!person) return;
    changePerson(client, person);
    onDone();
  }, [client, person, onDone]);
  if (enter.isPending || person) return <LoadingView what="the shop" />;
  return (
    <Door>
      {isCodeNeeded(enter.error) ? (
        <CodeForm onDone={onDone} onBack={onDone} />
      ) : (
        <div className={classes.tag}>
          <h1>Not signed in</h1>
          <ActProblem error={enter.error} />
          <Button onClick={onDone}>Back to the sign-in</Button>
        </div>
      )}
    </Door>
  );
}
