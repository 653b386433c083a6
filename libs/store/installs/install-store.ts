import type { AppliedCounts, ConsequencePlan, InstallStore } from '../../usecases';
import type { Db } from '../db';
import { liveStore } from '../live/live-store';
import { nextUnits } from './next-units';
import { placeNames } from './place-names';
import { readConsequences } from './read-consequences';
import { lockUnits, readHeld } from './read-held';
import { addReasons, withdrawReasons } from './write-callbacks';
import { clearFlags, raiseFlags } from './write-flags';
import { addNotes, closeNotes } from './write-notes';
import { confirmVerdicts, writeVerdicts } from './write-verdicts';

export function installStore(db: Db, zone: string): InstallStore {
  return {
    nextUnits: (scope, lookBackFrom, after, limit) => nextUnits(db, scope, lookBackFrom, after, limit, zone),
    names: (places) => placeNames(db, places),
    lockUnits: (choice) => lockUnits(db, choice, zone),
    held: (choice) => readHeld(db, choice, zone),
    consequences: (unitIds) => readConsequences(db, unitIds),
    apply: (plan, about) => applyPlan(db, plan, about),
  };
}

/** Closings go first, so that what takes their place finds the place free. */
async function applyPlan(
  db: Db,
  plan: ConsequencePlan,
  about: { revision: number; recheckId: number | null },
): Promise<AppliedCounts> {
  const changed = await writeVerdicts(db, plan.verdicts, about);
  await confirmVerdicts(db, plan.confirmed, about.revision);
  const flagsCleared = await clearFlags(db, plan.flagsCleared, about.recheckId);
  const flagsRaised = await raiseFlags(db, plan.flags, about.recheckId);
  const callbacksOpened = await addReasons(db, plan.reasons, about.recheckId);
  const callbacksClosed = await withdrawReasons(db, plan.reasonsWithdrawn, about.recheckId);
  await addNotes(db, plan.notes);
  await closeNotes(db, plan.notesClosed);
  const live = liveStore(db);
  if (plan.flags.length + plan.flagsCleared.length > 0) await live.tell('flag', null);
  if (plan.reasons.length + plan.reasonsWithdrawn.length > 0) await live.tell('callback', null);
  return { changed, flagsRaised, flagsCleared, callbacksOpened, callbacksClosed };
}
