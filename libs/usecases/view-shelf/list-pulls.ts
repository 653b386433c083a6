import type { ShelfPull } from '../../contracts';
import { parseDay, sayDay } from '../../day';
import { sightOf, type Actor } from '../actor';
import type { NoticeStore } from '../ports/shelf-store';
import type { Ports } from '../run';

/**
 * Parts on the shelf of the person's location that published bulletins bar or end. Of one bulletin where it is named: then
 * on every shelf within the person's sight.
 */
export async function listPulls({ store }: Ports, actor: Actor, sourceId?: number): Promise<ShelfPull[]> {
  const about = sourceId === undefined ? { locationId: actor.locationId } : { locationId: sightOf(actor), sourceId };
  return pullViews(await store.notices.pulls(about));
}

type Pulled = Awaited<ReturnType<NoticeStore['pulls']>>[number];

export function pullViews(pulls: readonly Pulled[]): ShelfPull[] {
  return pulls.map((pull) => ({ ...pull, sentence: sayPull(pull) }));
}

/** What to do, as one says it on the way to the shelf. What is picked lies on the benches, not in the bin. */
function sayPull({ item: { onHand, reserved, bin }, stillGood, since }: Pulled): string {
  const free = onHand - reserved;
  const what = `Pull ${free}${bin === '' ? '' : ` from ${bin}`}`;
  const day = since === null ? null : parseDay(since);
  const before = day === null ? '' : ` before ${sayDay(day)}`;
  const held = reserved === 0 ? '' : `; ${reserved} more ${reserved === 1 ? 'lies' : 'lie'} on the benches`;
  return `${what}${before}${stillGood ? ' and keep them apart: they are right for some units only' : ''}${held}.`;
}
