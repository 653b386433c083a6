import type { UnitView } from '../../contracts';
import type { Actor } from '../actor';
import { changeUnit, type OnUnit } from '../identify-unit/index';
import { done, refused, type Outcome } from '../outcome';
import type { Tables } from '../ports/index';
import type { Ports } from '../run';
import type { WholeUnit } from '../view-unit/index';

/**
 * Takes one piece of evidence out of the reckoning with a reason, or takes it up again. It stays on record. A piece
 * that follows from the unit's identity gets a row of its own first, to carry the reason.
 */
export function setAsideEvidence(
  ports: Ports,
  actor: Actor,
  { evidenceId, reason, ...on }: OnUnit & { evidenceId: string; reason: string | null },
): Promise<Outcome<UnitView>> {
  return changeUnit(ports, actor, on, async (whole, tx) => {
    const piece = whole.evidence.find(({ id }) => id === evidenceId);
    if (!piece) return refused('not-found', `The unit has no piece of evidence '${evidenceId.slice(0, 40)}'.`);
    await tx.units.setAside(await rowOf(tx, whole, evidenceId, actor), reason, actor.id);
    const kind = reason === null ? 'evidence-taken-up' : 'evidence-set-aside';
    return done({ kind, data: { kind: piece.kind, ...(reason === null ? {} : { reason }) }, personId: actor.id });
  });
}

async function rowOf(tx: Tables, whole: WholeUnit, evidenceId: string, actor: Actor): Promise<number> {
  const row = whole.evidenceRows.find(({ id }) => String(id) === evidenceId);
  if (row) return row.id;
  const { id: _id, kind, setAside: _aside, ...data } = whole.evidence.find(({ id }) => id === evidenceId)!;
  return tx.units.insertEvidence(whole.unit.id, kind, data, actor.id);
}
