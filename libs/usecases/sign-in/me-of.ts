import { permissionsOf, type Me } from '../../contracts';
import type { PersonRow } from '../ports/index';

/** What the page is told about the person who is signed in; nothing can be done while a required second factor is missing. */
export function meOf({ id, login, name, role, location, secondFactor }: PersonRow): Me {
  const permissions = secondFactor === 'missing' ? [] : [...permissionsOf(role)];
  return { id, login, name, role, location, secondFactor, permissions };
}
