import {
  judgeInstall,
  lookBackFrom,
  planConsequences,
  type ConsequencePlan,
  type JudgedInstall,
} from '../judge-installs';
import type { Day } from '../../day';
import type { InstallScans } from '../ports/install-scan';
import type { AppliedCounts, HeldInstall, InstallChoice } from '../ports/install-store';
import type { ChunkName, ChunkRow, RecheckRow } from '../ports/recheck-store';
import { StoreOutage, type Tables } from '../ports/store';
import { CHUNKS_AT_ONCE } from '../plan-chunks/plan-chunks';
import { recomputeUnits } from '../recompute-units';
import { loadRulebook, type LoadedRulebook } from '../rulebook';
import type { Ports } from '../run';
import { Company } from './company';
import { countUpTo, endsOfPieces, MOST_SUSPECTS } from './cut-chunk';
import { MOST_TRIES, noteFailure, noteNoEnd } from './note-failure';
import { sift } from './sift';

/**
 * Judges one chunk: what it holds, what follows, and "chunk done" in one transaction. Safe to run any number of times
 * at once: the chunk's row is taken by one, and the others find nothing to do. A failure of the judging counts as a
 * try; a database that is away does not, and is thrown. Judging that never comes to an end, because it takes its worker
 * with it or holds it up until the database gives up on it, is known by its beginnings, which are counted beforehand.
 */
export async function judgeChunk(ports: Ports, name: ChunkName, mostSuspects = MOST_SUSPECTS): Promise<void> {
  // Judging that holds up its process has the database give up on those beside it too. A chunk that was begun in vain is
  // judged alone the next time, so that one without fault loses one try by its neighbour, and not all of them.
  const alone = await ports.store.rechecks.begunBefore(name.recheckId, name.n);
  await company.join(() => beginAndJudge(ports, name, mostSuspects), { alone });
}

/** One for the process, as its chunks share its one thread. */
const company = new Company();

async function beginAndJudge({ store, clock }: Ports, name: ChunkName, mostSuspects: number): Promise<void> {
  const begun = await store.rechecks.beginChunk(name.recheckId, name.n);
  if (begun === null) return;
  if (begun > MOST_TRIES) return noteNoEnd(store, name);
  const at = performance.now();
  try {
    await store.transaction(async (tx) => {
      const recheck = await tx.rechecks.find(name.recheckId);
      const rulebook = await loadRulebook(tx, clock);
      const chunk = recheck && (await tx.rechecks.takeChunk(name.recheckId, name.n));
      if (chunk) await judgeTaken(tx, store.scans, recheck, chunk, { rulebook, mostSuspects });
    });
  } catch (error) {
    if (error instanceof StoreOutage) {
      // A line that was soon cut says nothing about the chunk. One that was given up after long silence does.
      if (performance.now() - at < store.idleLimitMs / 2)
        await store.rechecks.forgetBeginning(name.recheckId, name.n).catch(() => undefined);
      throw error;
    }
    const inTime = performance.now() - at < store.idleLimitMs;
    await noteFailure(store, name, inTime ? error : new Error(`judging did not end in time (${String(error)})`));
  }
}

async function judgeTaken(
  tx: Tables,
  scans: InstallScans,
  recheck: RecheckRow,
  chunk: ChunkRow,
  { rulebook, mostSuspects }: { readonly rulebook: LoadedRulebook; readonly mostSuspects: number },
): Promise<void> {
  const windowFrom = await lookBackFrom(tx, rulebook.today);
  const chosen = await choose(tx, scans, recheck, chunk, { rulebook, windowFrom, mostSuspects });
  const counts = await judgeChosen(tx, recheck, chosen, { rulebook, windowFrom });
  await tx.rechecks.chunkDone(recheck.id, chunk.n, { ...counts, judged: chosen.judged ?? counts.judged });
  await tx.rechecks.ring(recheck.id, CHUNKS_AT_ONCE);
  await tx.rechecks.finishIfAllDone(recheck.id);
  await tx.live.tell('recheck', recheck.id);
}

interface Papers {
  readonly rulebook: LoadedRulebook;
  readonly windowFrom: Day;
}

/** Installs to be judged with reasons; and how many were looked at in all, where that is known. */
interface Chosen {
  readonly judged: number | null;
  readonly choice: InstallChoice;
  readonly unitIds: readonly number[];
  /** Their units are locked. */
  readonly locked: boolean;
}

const NOTHING = { judged: 0, changed: 0, flagsRaised: 0, flagsCleared: 0, callbacksOpened: 0, callbacksClosed: 0 };

/**
 * Whole units where their build days are worked out again; otherwise what is left of a scan once everything that is good
 * and stays so has been sifted out by numbers. The scan takes no lock: whoever changes a unit meanwhile judges it himself,
 * by the same rulebook, which this transaction holds still. Nor does what is left, as long as every verdict is likely to
 * stand. Where more is left than one transaction should write, the chunk is cut: this one keeps its first units, and the
 * rest become chunks of their own.
 */
async function choose(
  tx: Tables,
  scans: InstallScans,
  { scope }: RecheckRow,
  chunk: ChunkRow,
  { rulebook, windowFrom, mostSuspects }: Papers & { readonly mostSuspects: number },
): Promise<Chosen> {
  if (scope.recompute) {
    const { fromUnit, toUnit } = chunk;
    const unitIds = await recomputeUnits(tx, rulebook.today, scope.recompute, { fromUnit, toUnit });
    return { judged: null, choice: { unitIds }, unitIds, locked: true };
  }
  const lookBackFrom = scope.ignoresLookBack ? null : windowFrom;
  const { judged, places, ends } = await scans.scan({ ...chunk, scope, lookBackFrom }, async (scan) => {
    const suspects = await sift(scan, rulebook, scans);
    const ends = endsOfPieces(suspects, mostSuspects);
    const last = ends[0] ?? chunk.toUnit;
    return { judged: countUpTo(scan, last), places: suspects.filter(({ unitId }) => unitId <= last), ends };
  });
  if (ends.length > 0) await tx.rechecks.cutChunk(chunk, ends);
  const locked = !places.every(({ stands }) => stands);
  const unitIds = locked ? await tx.installs.lockUnits({ places }) : [...new Set(places.map(({ unitId }) => unitId))];
  return { judged, choice: { places }, unitIds, locked };
}

async function judgeChosen(
  tx: Tables,
  recheck: RecheckRow,
  chosen: Chosen,
  papers: Papers,
): Promise<AppliedCounts & { readonly judged: number }> {
  if (chosen.unitIds.length === 0) return NOTHING;
  const plan = await planFor(tx, recheck, chosen, papers);
  if (!chosen.locked) {
    if (isNothing(plan)) return { ...NOTHING, judged: plan.judged };
    const unitIds = await tx.installs.lockUnits(chosen.choice);
    return judgeChosen(tx, recheck, { ...chosen, unitIds, locked: true }, papers);
  }
  const counts = await tx.installs.apply(plan, { revision: papers.rulebook.revision, recheckId: recheck.id });
  return { ...counts, judged: plan.judged };
}

async function planFor(
  tx: Tables,
  recheck: RecheckRow,
  { choice, unitIds }: Chosen,
  { rulebook, windowFrom }: Papers,
): Promise<ConsequencePlan> {
  const held = await tx.installs.held(choice);
  return planConsequences(
    held.map((install) => judgeHeld(install, rulebook)),
    await tx.installs.consequences(unitIds),
    { today: rulebook.today, lookBackFrom: windowFrom, wholeUnits: false, because: becauseOf(recheck) },
  );
}

/** Nothing in the plan would be written. */
function isNothing({ judged: _, ...lists }: ConsequencePlan): boolean {
  return Object.values(lists).every((list: readonly unknown[]) => list.length === 0);
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
