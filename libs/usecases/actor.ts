import { may, type Role } from '../contracts';

/** The person a use case acts for, as the edge has established it. */
export interface Actor {
  readonly id: number;
  readonly name: string;
  readonly role: Role;
  readonly locationId: number;
}

/** The location whose owners and calls the person may see, by the policy; null is every location of the shop. */
export function sightOf({ role, locationId }: Pick<Actor, 'role' | 'locationId'>): number | null {
  return may(role, 'see-every-location') ? null : locationId;
}
