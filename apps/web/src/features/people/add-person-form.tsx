import { Button, NativeSelect, TextInput } from '@mantine/core';
import { useState, type FormEvent } from 'react';
import { ROLES, type PeopleList, type Role } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { OneTimeLink } from './one-time-link';
import { useAddPerson } from './people-query';
import classes from './people.module.css';

/** Adds a person; the link to set the password is shown afterwards. */
export function AddPersonForm({ locations }: { locations: PeopleList['locations'] }) {
  const [login, setLogin] = useState('');
  const [name, setName] = useState('');
  const [role, setRole] = useState<Role>('technician');
  const [locationId, setLocationId] = useState(locations[0]?.id ?? 0);
  const add = useAddPerson();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    add.mutate({ login, name, role, locationId }, { onSuccess: () => (setLogin(''), setName('')) });
  };
  return (
    <form onSubmit={submit}>
      <div className={classes.fields}>
        <TextInput label="Name" value={name} onChange={(event) => setName(event.currentTarget.value)} required />
        <TextInput
          label="Sign-in name"
          value={login}
          onChange={(event) => setLogin(event.currentTarget.value)}
          autoCapitalize="none"
          required
        />
        <NativeSelect
          label="Role"
          value={role}
          data={[...ROLES]}
          onChange={(event) => setRole(event.currentTarget.value as Role)}
        />
        <NativeSelect
          label="Location"
          value={String(locationId)}
          data={locations.map(({ id, name: words }) => ({ value: String(id), label: words }))}
          onChange={(event) => setLocationId(Number(event.currentTarget.value))}
        />
        <Button type="submit" variant="filled" loading={add.isPending}>
          Add
        </Button>
      </div>
      <ActProblem error={add.error} />
      {add.data ? <OneTimeLink invited={add.data} /> : null}
    </form>
  );
}
