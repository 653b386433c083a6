import type { Clock } from './clock';
import type { Store } from './ports/index';

/** What a use case is given besides the actor and the input. */
export interface Ports {
  readonly store: Store;
  readonly clock: Clock;
}
