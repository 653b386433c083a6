import type { SettleNote, UnitView } from '../../contracts';
import type { Actor } from '../actor';
import { changeUnit, type OnUnit } from '../identify-unit/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/**
 * Settles a note that waited for the unit's next visit, with what was done about it. It stays on record, and no recheck
 * opens it again while the part it speaks of stays in its place.
 */
export function settleNote(
  ports: Ports,
  actor: Actor,
  { noteId, reason, ...on }: OnUnit & SettleNote & { readonly noteId: number },
): Promise<Outcome<UnitView>> {
  return changeUnit(ports, actor, on, async ({ unit }, tx) => {
    const settled = await tx.units.settleNote(unit.id, noteId, reason, actor.id);
    if (!settled) return refused('not-found', `The unit has no open note ${noteId}; somebody may have settled it.`);
    return done({ kind: 'note-settled', data: { note: settled.sentence, reason }, personId: actor.id });
  });
}
