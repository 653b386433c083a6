import type { Me } from '../../../../../libs/contracts';
import { Door } from './door';
import { PersonMenu } from './person-menu';
import { SecondFactor } from './second-factor';
import classes from './sign-in-form.module.css';

/** Instead of the shop, for somebody of whom it requires a second factor that is yet to be added. */
export function SecondFactorMissing({ person }: { person: Me }) {
  return (
    <Door>
      <div className={classes.tag}>
        <h1>Add a second factor</h1>
        <p>This shop requires one of every {person.role}. Nothing else opens before it is on.</p>
        <SecondFactor />
        <PersonMenu person={person} />
      </div>
    </Door>
  );
}
