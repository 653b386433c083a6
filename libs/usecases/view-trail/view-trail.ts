import type { UnitTrail } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

const PAGE = 200;

/** Everything that was done about one unit of one's location, in order, each with what was known at that moment. */
export async function viewTrail(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  { unitId, after }: { readonly unitId: number; readonly after: string | null },
): Promise<Outcome<UnitTrail>> {
  if (!(await store.units.isAt(unitId, actor.locationId)))
    return refused('not-found', `There is no unit ${unitId} at this location.`);
  const found = await store.trail.ofUnit(unitId, after, PAGE);
  const items = found.map(({ cursor: _, ...entry }) => entry);
  return done({ items, next: found.length === PAGE ? found.at(-1)!.cursor : null });
}
