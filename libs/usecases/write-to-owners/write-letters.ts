import { randomUUID } from 'node:crypto';
import type { WriteToOwners, WrittenToOwners } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { wrongNextDay } from '../attempt-callback/next-day';
import { chooseOwners, named } from './choose-owners';

/**
 * Notes a letter to each of these owners as an attempt, all under one batch by which they are printed, also again.
 * Who has not agreed, declines letters or has no address is left out and named.
 */
export async function writeLetters(
  { store, clock }: Ports,
  actor: Actor,
  { ids, nextOn }: WriteToOwners,
): Promise<Outcome<WrittenToOwners>> {
  const wrong = wrongNextDay(nextOn, clock.today());
  if (wrong !== null) return refused('bad-input', wrong, { field: 'nextOn' });
  return store.transaction(async (tx) => {
    const { may, leftOut } = await chooseOwners(tx, actor, ids, 'letter');
    if (may.length === 0) return done({ batch: null, written: [], leftOut });
    const batch = randomUUID();
    const about = { batch, nextOn, personId: actor.id };
    const noted = new Set(
      await tx.callbacks.addLetters(
        may.map(({ id }) => id),
        about,
      ),
    );
    for (const id of noted) await tx.live.tell('callback', id);
    return done({ batch, written: may.filter(({ id }) => noted.has(id)).map(named), leftOut });
  });
}
