import { Button, useComputedColorScheme, useMantineColorScheme } from '@mantine/core';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { Me } from '../../../../../libs/contracts';
import { send } from '../../lib/api-client';
import { changePerson } from '../../lib/session';
import classes from './person-menu.module.css';

/** Who is at the page, the light, and the way out. */
export function PersonMenu({ person }: { person: Me }) {
  const client = useQueryClient();
  const { setColorScheme } = useMantineColorScheme();
  const scheme = useComputedColorScheme('light');
  const signOut = useMutation({
    mutationFn: () => send('DELETE', '/session'),
    onSuccess: () => {
      changePerson(client, null);
    },
  });
  return (
    <div className={classes.person}>
      <Link to="/my-sign-in" className={classes.who}>
        {person.name}
        <span className={`soft ${classes.role}`}> · {person.role}</span>
      </Link>
      <Button variant="subtle" px="sm" onClick={() => setColorScheme(scheme === 'dark' ? 'light' : 'dark')}>
        {scheme === 'dark' ? 'Light' : 'Dark'}
      </Button>
      <Button variant="subtle" px="sm" onClick={() => signOut.mutate()}>
        Sign out
      </Button>
    </div>
  );
}
