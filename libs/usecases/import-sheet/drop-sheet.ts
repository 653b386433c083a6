import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** Throws every file away that has been kept for a day, whoever brought it; answers how many. */
export function dropOldSheets({ store }: Pick<Ports, 'store'>): Promise<number> {
  return store.sheets.removeOld();
}

/** Throws a file away that the person brought; what was imported from it stays. */
export async function dropSheet({ store }: Ports, actor: Actor, id: number): Promise<Outcome<null>> {
  const sheet = await store.sheets.find(id, actor.id);
  if (!sheet)
    return refused('not-found', 'There is no such file; files are kept for a day and only for who brought them.');
  await store.sheets.remove(id);
  return done(null);
}
