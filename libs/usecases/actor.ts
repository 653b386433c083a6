import type { Role } from '../contracts';

/** The person a use case acts for, as the edge has established it. */
export interface Actor {
  readonly id: number;
  readonly name: string;
  readonly role: Role;
  readonly locationId: number;
}

/**
 * The location whose owners and calls the person may see; null is every location of the shop. Technicians and the
 * counter see their own; managers and administrators answer for the whole shop, since a bulletin knows no location.
 */
export function sightOf({ role, locationId }: Pick<Actor, 'role' | 'locationId'>): number | null {
  return role === 'manager' || role === 'administrator' ? null : locationId;
}
