import { permissionsOf, type Me } from '../../contracts';
import type { PersonRow } from '../ports/index';

/** What the page is told about the person who is signed in. */
export function meOf({ id, login, name, role, location }: PersonRow): Me {
  return { id, login, name, role, location, permissions: [...permissionsOf(role)] };
}
