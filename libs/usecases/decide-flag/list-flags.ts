import type { FlagView } from '../../contracts';
import type { Actor } from '../actor';
import type { Ports } from '../run';
import { flagView } from '../view-ticket/index';

/** The flags of the location that wait for a manager, worst first; or those decided last, newest first. At most 500. */
export async function listFlags(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  state: 'open' | 'decided',
): Promise<FlagView[]> {
  const rows = state === 'open' ? store.flags.open(actor.locationId) : store.flags.decided(actor.locationId);
  return (await rows).map(flagView);
}
