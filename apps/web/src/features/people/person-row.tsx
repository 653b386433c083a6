import { Button, NativeSelect } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { ROLES, type PeopleList, type PersonView, type Role } from '../../../../../libs/contracts';
import { ActProblem } from '../../components/act-problem';
import { sayInstant } from '../../lib/say';
import { sessionQuery } from '../../lib/session';
import { OneTimeLink } from './one-time-link';
import { ElsewhereField } from './elsewhere-field';
import { elsewhereQuery } from '../../lib/elsewhere-query';
import { useChangePerson, useNewLink, useResetSecondFactor } from './people-query';
import classes from './people.module.css';

interface PersonRowProps {
  person: PersonView;
  locations: PeopleList['locations'];
}

/** One person: role and location change at once; who leaves is signed out everywhere. */
export function PersonRow({ person, locations }: PersonRowProps) {
  const change = useChangePerson(person);
  const link = useNewLink(person);
  const reset = useResetSecondFactor(person);
  const provider = useQuery(elsewhereQuery).data?.name ?? null;
  const isOneself = useQuery(sessionQuery).data?.id === person.id;
  return (
    <li className={classes.person}>
      <div>
        <strong>{person.name}</strong> <span className="num soft">{person.login}</span>
        <br />
        <span className="soft">{standingOf(person)}</span>
      </div>
      <NativeSelect
        label="Role"
        aria-label={`Role of ${person.name}`}
        value={person.role}
        data={[...ROLES]}
        disabled={!person.active || change.isPending}
        onChange={(event) => change.mutate({ role: event.currentTarget.value as Role })}
      />
      <NativeSelect
        label="Location"
        aria-label={`Location of ${person.name}`}
        value={String(person.location.id)}
        data={locations.map(({ id, name }) => ({ value: String(id), label: name }))}
        disabled={!person.active || change.isPending}
        onChange={(event) => change.mutate({ locationId: Number(event.currentTarget.value) })}
      />
      <div className={classes.acts}>
        {person.active ? (
          <Button onClick={() => link.mutate()} loading={link.isPending}>
            New link
          </Button>
        ) : null}
        {person.hasSecondFactor && !isOneself ? (
          <Button onClick={() => reset.mutate()} loading={reset.isPending}>
            Take second factor away
          </Button>
        ) : null}
        <Button onClick={() => change.mutate({ active: !person.active })} loading={change.isPending}>
          {person.active ? 'Has left' : 'Works here again'}
        </Button>
      </div>
      {person.active && provider !== null ? <ElsewhereField person={person} provider={provider} /> : null}
      <div className={classes.wide}>
        <ActProblem error={change.error ?? link.error ?? reset.error} />
        {link.data ? <OneTimeLink invited={link.data} /> : null}
      </div>
    </li>
  );
}

function standingOf({ active, hasPassword, hasSecondFactor, linkUntil }: PersonView): string {
  if (!active) return 'Has left; cannot sign in.';
  if (linkUntil !== null) return `Has a link until ${sayInstant(linkUntil)}.`;
  if (hasSecondFactor) return 'Signs in with a password and a code.';
  return hasPassword ? 'Signs in with a password.' : 'Has no password and no link: make a new link.';
}
