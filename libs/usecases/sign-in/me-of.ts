import { permissionsOf, type Me } from '../../contracts';
import type { PersonRow } from '../ports/index';
import { readPrints } from '../print-papers/print-settings';

/** What the page is told about the person who is signed in; nothing can be done while a required second factor is missing. */
export function meOf({ id, login, name, role, location, secondFactor, ownReading, shopPrints }: PersonRow): Me {
  const permissions = secondFactor === 'missing' ? [] : [...permissionsOf(role)];
  const { manner, torque, length } = ownReading ?? readPrints(shopPrints);
  return {
    id,
    login,
    name,
    role,
    location,
    secondFactor,
    permissions,
    reading: { manner, torque, length },
    ownReading,
  };
}
