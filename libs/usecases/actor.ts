import type { Role } from '../contracts';

/** The person a use case acts for, as the edge has established it. */
export interface Actor {
  readonly id: number;
  readonly name: string;
  readonly role: Role;
  readonly locationId: number;
}
