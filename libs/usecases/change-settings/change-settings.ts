import type { ChangedSettings, ChangeSettings, ShopSettings } from '../../contracts';
import { usualStanding, type Standing } from '../../fit-rules';
import type { Actor } from '../actor';
import { lookBackMonths } from '../judge-installs';
import { shelfIsKept } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import { EVERYTHING } from '../order-recheck/order-recheck';
import { KEEP_SHELF, LOOK_BACK_MONTHS, STANDING, STRENGTH_THRESHOLD } from '../ports/session-store';
import type { Tables } from '../ports/store';
import { startRecheck } from '../publish-bulletin/start-recheck';
import { strengthThreshold } from '../rulebook';
import type { Ports } from '../run';
import { settled } from '../settled';

/** What is settled together, on one version. */
const SETTLED = [LOOK_BACK_MONTHS, STANDING, STRENGTH_THRESHOLD, KEEP_SHELF];

/** What the shop has settled for itself; the usual where it has not. */
export async function viewSettings({ store }: Ports): Promise<ShopSettings> {
  return settingsOf(store);
}

/**
 * Changes how papers stand against each other, how far back owners are called, or from which ratio of torque on a
 * shear fastener breaks sooner or later. Each can change an answer, so a recheck of everything starts with it, in the
 * same transaction, and its id is answered. What is the same already starts none, and neither does whether a shelf is
 * kept, which changes no answer.
 */
export async function changeSettings(
  { store }: Ports,
  actor: Actor,
  input: ChangeSettings & { readonly version: number },
): Promise<Outcome<ChangedSettings>> {
  return store.transaction(async (tx) => {
    const { version, lookBackMonths: months, standing, strengthThreshold: threshold, keepShelf } = input;
    const { revision } = await tx.rulebook.alone();
    if (!(await tx.settings.claim(SETTLED, version)))
      return refused('stale', 'The settings were changed by somebody else meanwhile; look again.', {
        current: await settingsOf(tx),
      });
    const now = await settingsOf(tx);
    const newStanding = standing !== undefined && differs(standing, now.standing);
    const newMonths = months !== undefined && months !== now.lookBackMonths;
    const newThreshold = threshold !== undefined && !sameThreshold(threshold, now.strengthThreshold);
    if (keepShelf !== undefined && keepShelf !== now.keepShelf)
      await tx.settings.write(KEEP_SHELF, keepShelf, actor.id);
    if (!newStanding && !newMonths && !newThreshold) return done({ ...(await settingsOf(tx)), recheckId: null });
    if (newThreshold) await tx.settings.write(STRENGTH_THRESHOLD, threshold, actor.id);
    if (newMonths) await tx.settings.write(LOOK_BACK_MONTHS, months, actor.id);
    if (newStanding) await tx.settings.write(STANDING, standing, actor.id);
    const judgedUnder = newStanding
      ? (await tx.rulebook.addRevision({ cause: 'standing', sourceId: null, personId: actor.id })).revision
      : revision;
    const about = { cause: 'setting' as const, sourceId: null, scope: EVERYTHING, requestedBy: actor.id };
    const recheckId = await startRecheck(tx, { ...about, revision: judgedUnder });
    return done({ ...(await settingsOf(tx)), recheckId });
  });
}

function settingsOf(tables: Tables): Promise<ShopSettings> {
  return settled(tables, SETTLED, async () => {
    const standing = ((await tables.settings.read(STANDING)) as Standing | null) ?? usualStanding;
    return {
      lookBackMonths: await lookBackMonths(tables),
      standing: { ...standing },
      strengthThreshold: await strengthThreshold(tables),
      keepShelf: await shelfIsKept(tables),
    };
  });
}

function differs(a: Standing, b: Standing): boolean {
  return Object.entries(a).some(([kind, weight]) => b[kind as keyof Standing] !== weight);
}

function sameThreshold(a: ShopSettings['strengthThreshold'], b: ShopSettings['strengthThreshold']): boolean {
  return a.soonerBelow === b.soonerBelow && a.laterAbove === b.laterAbove;
}
