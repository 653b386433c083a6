import type { SavedSerialScheme, SaveSerialScheme } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { SchemeRow, Tables } from '../ports/index';
import type { Ports } from '../run';
import { recheckView } from '../view-recheck/view-recheck';
import { schemeView } from './list-shop-data';
import { FreeSchemeIds, linesReadBy, readScheme, type Catalogue } from './read-scheme';
import { startRecompute } from './start-recompute';

/** The scheme that is changed and the version it was seen at; left out for a new one. */
export interface OnRow {
  readonly id: number;
  readonly version: number;
}

/**
 * Keeps a new or changed serial scheme. In the same transaction a recheck is ordered that works out the build days of
 * every unit the scheme can touch again, before and after the change, and judges what they hold; nothing of that is
 * waited for. A scheme's maker and its code stay, since fit rules name them.
 */
export async function saveSerialScheme(
  { store }: Ports,
  actor: Actor,
  { scheme: typed, on }: SaveSerialScheme & { readonly on?: OnRow },
): Promise<Outcome<SavedSerialScheme>> {
  const kept = await store.transaction(async (tx) => {
    await tx.rulebook.alone();
    const catalogue = { makers: await tx.catalogue.makers(), lines: await tx.catalogue.lines() };
    const schemes = await tx.shopData.schemes();
    const before = on === undefined ? null : (schemes.find(({ id }) => id === on.id) ?? null);
    const refusal = on === undefined ? null : refusalOf(before, on, typed.maker);
    if (refusal) return refusal;
    const ids = new FreeSchemeIds(schemes.map(({ scheme }) => scheme.id));
    const read = readScheme(typed, before?.scheme.id ?? ids.next(typed.maker), catalogue);
    if (!read.ok) return read;
    const { scheme, maker } = read.value;
    const namesake = schemes.find((one) => one.id !== on?.id && isNamedAlike(one.scheme, scheme));
    if (namesake) {
      const detail = `${maker.name} has a scheme named '${scheme.name}' already; change that one, or use another name.`;
      return refused('conflict', detail, { field: 'scheme.name' });
    }
    const id = on ? await change(tx, on, scheme, actor) : await tx.shopData.insertScheme(maker.id, scheme, actor.id);
    if (id === null) throw new Error(`serial scheme ${scheme.id} could not be kept`);
    const lines = touchedLines([...(before ? [before.scheme] : []), scheme], catalogue);
    return done({ id, recheckId: await startRecompute(tx, actor, { lines, evidence: null }) });
  });
  if (!kept.ok) return kept;
  const saved = (await store.shopData.scheme(kept.value.id))!;
  const recheck = (await store.rechecks.find(kept.value.recheckId))!;
  return done({ version: saved.version, saved: schemeView(saved), recheck: recheckView(recheck) });
}

function refusalOf(before: SchemeRow | null, { version }: OnRow, maker: string): Outcome<never> | null {
  if (!before) return refused('not-found', 'There is no serial scheme with this number.');
  if (before.version !== version)
    return refused('stale', `Serial scheme '${before.scheme.name}' was changed by somebody else meanwhile.`, {
      current: before,
    });
  if (before.scheme.maker !== maker)
    return refused('bad-input', `The scheme belongs to maker ${before.scheme.maker}; enter a new one for ${maker}.`, {
      field: 'scheme.maker',
    });
  return null;
}

async function change(tx: Tables, { id, version }: OnRow, scheme: SchemeRow['scheme'], actor: Actor) {
  return (await tx.shopData.updateScheme(id, version, scheme, actor.id)) ? id : null;
}

function isNamedAlike(one: SchemeRow['scheme'], other: SchemeRow['scheme']): boolean {
  return one.maker === other.maker && one.name.toLowerCase() === other.name.toLowerCase();
}

function touchedLines(schemes: readonly SchemeRow['scheme'][], catalogue: Catalogue): string[] {
  return [...new Set(schemes.flatMap((scheme) => linesReadBy(scheme, catalogue)))].sort();
}
