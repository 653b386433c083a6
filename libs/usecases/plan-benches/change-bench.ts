import type { BenchLists, ChangeBench } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { benchListsOf } from './view-bench-lists';

/** Sets how many minutes of work a day at a bench takes. */
export async function changeBench(
  { store, clock }: Ports,
  actor: Actor,
  { id, version, dayMinutes }: ChangeBench & { readonly id: number; readonly version: number },
): Promise<Outcome<BenchLists>> {
  return store.transaction(async (tx) => {
    if (!(await tx.benches.at(actor.locationId)).some((bench) => bench.id === id)) {
      return refused('not-found', `There is no bench ${id} here.`);
    }
    const set = await tx.benches.setDay(id, version, dayMinutes);
    const lists = await benchListsOf(tx, clock, actor);
    if (set) return done(lists);
    return refused('stale', 'The day of this bench was changed by somebody else meanwhile; look again.', {
      current: lists,
    });
  });
}
