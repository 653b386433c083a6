import type { UnitTrail } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

const PAGE = 200;

/** Everything that was done about one unit that the person may see, in order, each with what was known at that moment. */
export async function viewTrail(
  { store }: Pick<Ports, 'store'>,
  actor: Actor,
  { unitId, after }: { readonly unitId: number; readonly after: string | null },
): Promise<Outcome<UnitTrail>> {
  const sight = sightOf(actor);
  const seen = sight === null ? (await store.units.byId(unitId)) !== null : await store.units.isAt(unitId, sight);
  if (!seen) return refused('not-found', `There is no unit ${unitId} here.`);
  const found = await store.trail.ofUnit(unitId, after, PAGE);
  const items = found.map(({ cursor: _, ...entry }) => entry);
  return done({ items, next: found.length === PAGE ? found.at(-1)!.cursor : null });
}
