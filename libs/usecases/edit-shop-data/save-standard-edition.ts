import { prepareShop, StandardEditionSchema, type StandardEdition } from '../../build-date';
import type { SavedStandardEdition, SaveStandardEdition } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { EditionRow, Tables } from '../ports/index';
import type { Ports } from '../run';
import { recheckView } from '../view-recheck/view-recheck';
import { editionView } from './list-shop-data';
import type { OnRow } from './save-serial-scheme';
import { startRecompute } from './start-recompute';
import { readShape } from '../../shape';

/**
 * Keeps a new or changed edition of a standard, and in the same transaction orders the build days of the units whose
 * plate names a standard to be worked out again and judged.
 */
export async function saveStandardEdition(
  { store }: Ports,
  actor: Actor,
  { edition: typed, on }: SaveStandardEdition & { readonly on?: OnRow },
): Promise<Outcome<SavedStandardEdition>> {
  const read = readEdition(typed);
  if (!read.ok) return read;
  const edition = read.value;
  const kept = await store.transaction(async (tx) => {
    await tx.rulebook.alone();
    const all = await tx.shopData.editions();
    const refusal = refusalOf(all, edition, on);
    if (refusal) return refusal;
    const id = on ? await change(tx, on, edition, actor) : await tx.shopData.insertEdition(edition, actor.id);
    if (id === null) throw new Error(`edition ${edition.edition} of ${edition.standard} could not be kept`);
    return done({ id, recheckId: await startRecompute(tx, actor, { lines: null, evidence: 'standard-edition' }) });
  });
  if (!kept.ok) return kept;
  const saved = (await store.shopData.edition(kept.value.id))!;
  const recheck = (await store.rechecks.find(kept.value.recheckId))!;
  return done({ version: saved.version, saved: editionView(saved), recheck: recheckView(recheck) });
}

function readEdition(typed: SaveStandardEdition['edition']): Outcome<StandardEdition> {
  const read = readShape(StandardEditionSchema, typed);
  if (read.ok) return done(read.value);
  const [{ path, words }] = read.problems;
  const field = ['edition', ...path].join('.');
  return refused('bad-input', `${field}: ${words}.`, { field });
}

/** `ANSI/OPEI B71.3` and `ANSI B71.3` are one standard: the library decides which names are alike. */
function refusalOf(all: readonly EditionRow[], edition: StandardEdition, on?: OnRow): Outcome<never> | null {
  if (on) {
    const before = all.find(({ id }) => id === on.id);
    if (!before) return refused('not-found', 'There is no edition of a standard with this number.');
    if (before.version !== on.version)
      return refused('stale', 'This edition was changed by somebody else meanwhile.', { current: before });
  }
  const others = all.filter(({ id }) => id !== on?.id).map((row) => row.edition);
  const known = prepareShop({ serialSchemes: [], standardEditions: others }).edition(edition.standard, edition.edition);
  if (!known) return null;
  const name = `${known.edition.standard} of ${known.edition.edition}`;
  return refused('conflict', `${name} is on the list already; change that entry.`, { field: 'edition.edition' });
}

async function change(tx: Tables, { id, version }: OnRow, edition: StandardEdition, actor: Actor) {
  return (await tx.shopData.updateEdition(id, version, edition, actor.id)) ? id : null;
}
