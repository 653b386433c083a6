import { Button } from '@mantine/core';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { ActProblem } from '../../components/act-problem';
import classes from '../../features/session/own-sign-in.module.css';
import { OwnPasswordForm } from '../../features/session/own-password-form';
import { ReadingForm } from '../../features/session/reading-form';
import { SecondFactor } from '../../features/session/second-factor';
import { send } from '../../lib/api-client';
import { changePerson, sessionQuery } from '../../lib/session';

/** How one reads the page, one's own password and second factor, and the way out of every device. */
export function MySignInPage() {
  const client = useQueryClient();
  const person = useQuery(sessionQuery).data;
  const everywhere = useMutation({
    mutationFn: () => send('DELETE', '/session/all'),
    onSuccess: () => {
      changePerson(client, null);
    },
  });
  return (
    <>
      <h1>My sign-in</h1>
      {person ? (
        <section aria-labelledby="reading">
          <h2 id="reading">Days, numbers and units on the page</h2>
          <ReadingForm person={person} />
        </section>
      ) : null}
      <section aria-labelledby="password" className={classes.part}>
        <h2 id="password">Password</h2>
        <OwnPasswordForm />
      </section>
      <section aria-labelledby="second-factor" className={classes.part}>
        <h2 id="second-factor">Second factor</h2>
        <SecondFactor />
      </section>
      <section aria-labelledby="everywhere" className={classes.part}>
        <h2 id="everywhere">Signed in somewhere else?</h2>
        <p>This ends every sign-in of yours, here too.</p>
        <ActProblem error={everywhere.error} />
        <Button onClick={() => everywhere.mutate()} loading={everywhere.isPending}>
          Sign out everywhere
        </Button>
      </section>
    </>
  );
}
