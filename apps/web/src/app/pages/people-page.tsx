import { useQuery } from '@tanstack/react-query';
import { QueryView } from '../../components/query-view';
import { AddPersonForm } from '../../features/people/add-person-form';
import { peopleQuery } from '../../features/people/people-query';
import classes from '../../features/people/people.module.css';
import { SignInRulesChoice } from '../../features/people/sign-in-rules';
import { PersonRow } from '../../features/people/person-row';

/** Who works in the shop, and what each may do. */
export function PeoplePage() {
  const people = useQuery(peopleQuery);
  return (
    <>
      <h1>People</h1>
      <QueryView query={people} what="the people of the shop">
        {({ people: all, locations }) => (
          <>
            <section aria-labelledby="add-person">
              <h2 id="add-person">Add somebody</h2>
              <AddPersonForm locations={locations} />
            </section>
            <section aria-labelledby="sign-in-rules" className={classes.part}>
              <h2 id="sign-in-rules">Signing in</h2>
              <SignInRulesChoice />
            </section>
            <section aria-labelledby="everybody" className={classes.part}>
              <h2 id="everybody">Everybody</h2>
              <ul>
                {all.map((person) => (
                  <PersonRow key={person.id} person={person} locations={locations} />
                ))}
              </ul>
            </section>
          </>
        )}
      </QueryView>
    </>
  );
}
