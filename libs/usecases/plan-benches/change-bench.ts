import type { BenchLists, ChangeBench } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { benchListsOf } from './view-bench-lists';

/** Sets how many minutes of work a day at a bench takes. */
export async function changeBench(
  { store, clock }: Ports,
  actor: Actor,
  { id, dayMinutes }: ChangeBench & { readonly id: number },
): Promise<Outcome<BenchLists>> {
  return store.transaction(async (tx) => {
    if (!(await tx.benches.at(actor.locationId)).some((bench) => bench.id === id)) {
      return refused('not-found', `There is no bench ${id} here.`);
    }
    await tx.benches.setDay(id, dayMinutes);
    return done(await benchListsOf(tx, clock, actor));
  });
}
