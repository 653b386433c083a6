import { judgeInstall, lookBackFrom, planConsequences, type JudgedInstall } from '../judge-installs';
import type { HeldInstall, InstallChoice } from '../ports/install-store';
import type { ChunkName, ChunkRow, RecheckRow } from '../ports/recheck-store';
import { StoreOutage, type Tables } from '../ports/store';
import { CHUNKS_AT_ONCE } from '../plan-chunks/plan-chunks';
import { recomputeUnits } from '../recompute-units';
import { loadRulebook, type LoadedRulebook } from '../rulebook';
import type { Ports } from '../run';
import { noteFailure } from './note-failure';

/**
 * Judges one chunk: what it holds, what follows, and "chunk done" in one transaction. Safe to run any number of times
 * at once: the chunk's row is taken by one, and the others find nothing to do. A failure of the judging counts as a
 * try; a database that is away does not, and is thrown.
 */
export async function judgeChunk({ store, clock }: Ports, name: ChunkName): Promise<void> {
  try {
    await store.transaction(async (tx) => {
      const recheck = await tx.rechecks.find(name.recheckId);
      const rulebook = await loadRulebook(tx, clock);
      const chunk = recheck && (await tx.rechecks.takeChunk(name.recheckId, name.n));
      if (chunk) await judgeTaken(tx, recheck, chunk, rulebook);
    });
  } catch (error) {
    if (error instanceof StoreOutage) throw error;
    await noteFailure(store, name, error);
  }
}

async function judgeTaken(tx: Tables, recheck: RecheckRow, chunk: ChunkRow, rulebook: LoadedRulebook): Promise<void> {
  const windowFrom = await lookBackFrom(tx, rulebook.today);
  const { scope } = recheck;
  const { fromUnit, toUnit } = chunk;
  const { unitIds, choice } = scope.recompute
    ? whole(await recomputeUnits(tx, rulebook.today, scope.recompute, chunk))
    : await locked(tx, { scope, fromUnit, toUnit, lookBackFrom: scope.ignoresLookBack ? null : windowFrom });
  const held = await tx.installs.held(choice);
  const plan = planConsequences(
    held.map((install) => judgeHeld(install, rulebook)),
    await tx.installs.consequences(unitIds),
    { today: rulebook.today, lookBackFrom: windowFrom, wholeUnits: false, because: becauseOf(recheck) },
  );
  const counts = await tx.installs.apply(plan, { revision: rulebook.revision, recheckId: recheck.id });
  await tx.rechecks.chunkDone(recheck.id, chunk.n, { ...counts, judged: plan.judged });
  await tx.rechecks.ring(recheck.id, CHUNKS_AT_ONCE);
  await tx.rechecks.finishIfAllDone(recheck.id);
  await tx.live.tell('recheck', recheck.id);
}

interface Chosen {
  readonly unitIds: readonly number[];
  readonly choice: InstallChoice;
}

const whole = (unitIds: readonly number[]): Chosen => ({ unitIds, choice: { unitIds } });

async function locked(tx: Tables, choice: InstallChoice): Promise<Chosen> {
  return { unitIds: await tx.installs.lockUnits(choice), choice };
}

function judgeHeld(install: HeldInstall, rulebook: LoadedRulebook): JudgedInstall {
  try {
    return judgeInstall(install, rulebook);
  } catch (error) {
    const { unit, position, place } = install;
    throw new Error(`unit ${unit.id}, position ${position}, place ${place} cannot be judged: ${String(error)}`, {
      cause: error,
    });
  }
}

/** What a closing says when the answer itself changed. */
function becauseOf({ cause, bulletin }: RecheckRow): string {
  if (cause === 'withdraw') return `Bulletin ${bulletin ?? ''} was withdrawn.`;
  if (cause === 'publish' || cause === 'correct') return `Bulletin ${bulletin ?? ''} was published.`;
  if (cause === 'in-force') return 'Papers dated ahead reached their day.';
  if (cause === 'evidence') return 'What build dates are read by was changed.';
  return 'It was judged again.';
}
