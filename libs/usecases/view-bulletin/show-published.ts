import type { BulletinRow, RecheckView } from '../../contracts';
import { done, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { recheckView } from '../view-recheck/view-recheck';

/** After a bulletin was published or withdrawn: how it stands, and the recheck that goes on by itself. */
export async function showPublished(
  { store }: Ports,
  id: number,
  outcome: Outcome<{ readonly recheckId: number }>,
): Promise<Outcome<{ readonly bulletin: BulletinRow; readonly recheck: RecheckView }>> {
  if (!outcome.ok) return outcome;
  const bulletin = await store.bulletins.find(id);
  const recheck = await store.rechecks.find(outcome.value.recheckId);
  return done({ bulletin: bulletin!, recheck: recheckView(recheck!) });
}

/** After a draft was saved: the whole of it. */
export async function shown<T>(
  outcome: Outcome<{ readonly id: number }>,
  show: (id: number) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  return outcome.ok ? show(outcome.value.id) : outcome;
}
