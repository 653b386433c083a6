import type { DemoPeople } from '../../../../../libs/contracts';
import classes from './sign-in-form.module.css';

/** The demo shop's people by role; picking one fills in the name. */
export function DemoPeopleList({ people, onPick }: { people: DemoPeople; onPick: (login: string) => void }) {
  return (
    <section className={classes.people} aria-labelledby="demo-people">
      <h2 id="demo-people">This is a demo shop</h2>
      <p className="soft">Everyone here is invented. The README names the password they share.</p>
      <ul>
        {people.map((person) => (
          <li key={person.login}>
            <button type="button" onClick={() => onPick(person.login)} className={classes.person}>
              <span className="num">{person.login}</span>
              <span>{person.name}</span>
              <span className="soft">{person.role}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
