import type { MarkPulled, ShelfPull } from '../../contracts';
import { sightOf, type Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { pullViews } from '../view-shelf/list-pulls';

/** Marks a part that a bulletin bars or ends as seen to on a shelf: pulled, marked in its bin, or sent back. */
export function markPulled(
  { store }: Ports,
  actor: Actor,
  { noticeId, itemId, note }: MarkPulled & { noticeId: number },
): Promise<Outcome<ShelfPull[]>> {
  return store.transaction(async (tx) => {
    const about = { locationId: sightOf(actor), noticeId };
    const here = (await tx.notices.pulls(about)).find(({ item }) => item.id === itemId);
    if (!here) return refused('not-found', 'No bulletin has this part pulled from a shelf that you see.');
    if (here.done || !(await tx.notices.markPulled(noticeId, itemId, note, actor.id))) {
      return refused('already-done', `${here.item.part.number} was seen to already.`, {
        current: pullViews(await tx.notices.pulls(about)),
      });
    }
    await tx.live.tell('shelf', itemId);
    return done(pullViews(await tx.notices.pulls(about)));
  });
}
