import { Button } from '@mantine/core';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { ActProblem } from '../../components/act-problem';
import classes from '../../features/session/own-sign-in.module.css';
import { OwnPasswordForm } from '../../features/session/own-password-form';
import { SecondFactor } from '../../features/session/second-factor';
import { send } from '../../lib/api-client';
import { changePerson } from '../../lib/session';

/** One's own password and second factor, and the way out of every device. */
export function MySignInPage() {
  const client = useQueryClient();
  const everywhere = useMutation({
    mutationFn: () => send('DELETE', '/session/all'),
    onSuccess: () => {
      changePerson(client, null);
    },
  });
  return (
    <>
      <h1>My sign-in</h1>
      <section aria-labelledby="password">
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
