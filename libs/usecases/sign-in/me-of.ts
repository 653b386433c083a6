import { permissionsOf, type Me } from '../../contracts';
import type { PersonRow } from '../ports/index';
import { printSettingsOf } from '../print-papers/print-settings';
import type { Ports } from '../run';

/**
 * What the page is told about the person who is signed in, who reads as the shop prints where nothing else was chosen;
 * nothing can be done while a required second factor is missing.
 */
export async function meOf({ store }: Pick<Ports, 'store'>, person: PersonRow): Promise<Me> {
  const { id, login, name, role, location, secondFactor, ownReading } = person;
  const permissions = secondFactor === 'missing' ? [] : [...permissionsOf(role)];
  const { manner, torque, length } = ownReading ?? (await printSettingsOf(store));
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
