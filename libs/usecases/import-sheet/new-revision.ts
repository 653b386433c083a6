import type { RecheckScope } from '../../contracts';
import type { Actor } from '../actor';
import type { Tables } from '../ports/index';
import { startRecheck } from '../publish-bulletin/start-recheck';

/** A revision of the rulebook for a catalogue that was changed: names and strengths are read anew with it. */
export async function newRevision(tx: Tables, actor: Actor): Promise<null> {
  await tx.rulebook.addRevision({ cause: 'import', sourceId: null, personId: actor.id });
  return null;
}

/** Orders what was brought in to be judged, in the import's transaction. */
export async function recheckOf(tx: Tables, actor: Actor, scope: RecheckScope): Promise<number> {
  const { revision } = await tx.rulebook.latest();
  return startRecheck(tx, { cause: 'import', sourceId: null, revision, scope, requestedBy: actor.id });
}

/** All that units of these lines hold. */
export function scopeOfLines(lines: Iterable<string>, ignoresLookBack = false): RecheckScope {
  const areas = [...new Set(lines)].sort().map((line) => ({ line, positions: [], from: null, to: null }));
  return { everything: false, areas, ignoresLookBack };
}
