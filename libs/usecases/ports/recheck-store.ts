import type { RecheckScope } from '../../contracts';
import type { Day } from '../../day';
import type { AppliedCounts } from './install-store';

export type RecheckCause =
  'publish' | 'withdraw' | 'correct' | 'in-force' | 'evidence' | 'setting' | 'order' | 'import';

export interface NewRecheck {
  readonly cause: RecheckCause;
  readonly sourceId: number | null;
  readonly revision: number;
  readonly scope: RecheckScope;
  readonly requestedBy: number | null;
}

export interface RecheckRow {
  readonly id: number;
  readonly cause: RecheckCause;
  readonly sourceId: number | null;
  /** The bulletin's number, where a bulletin caused it. */
  readonly bulletin: string | null;
  readonly revision: number;
  readonly scope: RecheckScope;
  readonly state: 'planned' | 'running' | 'done';
  readonly planned: number;
  readonly judged: number;
  readonly changed: number;
  readonly flagsRaised: number;
  readonly flagsCleared: number;
  readonly callbacksOpened: number;
  readonly callbacksClosed: number;
  readonly setAside: number;
  readonly setAsideWhy: readonly string[];
  /** Epoch milliseconds by the database's clock. */
  readonly createdAt: number;
  readonly startedAt: number | null;
  readonly finishedAt: number | null;
  readonly now: number;
}

export interface ChunkName {
  readonly recheckId: number;
  readonly n: number;
}

export interface ChunkRow extends ChunkName {
  readonly fromUnit: number;
  readonly toUnit: number;
  /** The units by id; empty means all from `fromUnit` to `toUnit`. */
  readonly units: readonly number[];
  readonly tries: number;
}

/** How the queue of rechecks stands. Ages in seconds by the database's clock; 0 when nothing waits. */
export interface QueueState {
  readonly bellsWaiting: number;
  readonly oldestBellSeconds: number;
  readonly chunksWaiting: number;
  readonly chunksHeld: number;
  readonly oldestWorkSeconds: number;
  readonly rechecksPlanned: number;
  readonly rechecksRunning: number;
  readonly rechecksDone: number;
  readonly installsJudged: number;
  readonly setAside: number;
  readonly workers: readonly { readonly name: string; readonly concurrency: number }[];
}

export interface PlanCut {
  readonly unitsAChunk: number;
  readonly lookBackFrom: Day | null;
  readonly keepFirst: boolean;
  /** A scope estimated at so many installs, and at no small share of all, is read from end to end, not looked up. */
  readonly wideFrom: number;
}

export interface RecheckStore {
  insert(recheck: NewRecheck): Promise<number>;
  find(id: number): Promise<RecheckRow | null>;
  /** Newest first, at most `limit`. */
  newest(limit: number): Promise<readonly RecheckRow[]>;
  ofSource(sourceId: number): Promise<RecheckRow | null>;
  /** Locks the recheck when it is still planned; null when another has begun it or it does not exist. */
  takePlanned(id: number): Promise<RecheckRow | null>;
  /**
   * Cuts the scope into runs of at most so many units and marks the recheck as running. With `keepFirst` the first
   * counts as under way: whoever plans judges it himself.
   */
  plan(id: number, scope: RecheckScope, cut: PlanCut): Promise<void>;
  /** Orders bells for waiting chunks that nobody holds, so that at most `atOnce` of the recheck are under way. */
  ring(id: number, atOnce: number): Promise<number>;
  /** True when the chunk was begun before, and that failed or has not come to an end. */
  begunBefore(id: number, n: number): Promise<boolean>;
  /**
   * Counts that the chunk is begun, in a transaction of its own; answers how often it was begun without an end, or null
   * when it is done, set aside, or in another's hands.
   */
  beginChunk(id: number, n: number): Promise<number | null>;
  /** Takes one beginning back: it ended through no fault of the chunk. */
  forgetBeginning(id: number, n: number): Promise<void>;
  /** Locks the chunk; null when it is done, set aside, or in another's hands. */
  takeChunk(id: number, n: number): Promise<ChunkRow | null>;
  chunkDone(id: number, n: number, counts: AppliedCounts & { judged: number }): Promise<void>;
  /** Counts a try that came to an end and failed; answers the chunk as it stands then, or null when it is no longer waiting. */
  chunkFailed(id: number, n: number, problem: string): Promise<ChunkRow | null>;
  /**
   * Leaves a chunk with its units up to the first of these, and makes chunks of the rest: each up to one of the others,
   * the last up to the old end.
   */
  cutChunk(chunk: ChunkRow, ends: readonly number[]): Promise<void>;
  /** Puts several smaller chunks in the place of one of several units. */
  splitChunk(chunk: ChunkRow): Promise<void>;
  setChunkAside(id: number, n: number): Promise<void>;
  queue(): Promise<QueueState>;
  /** Marks the recheck as done when no chunk waits any more; true when this call did. */
  finishIfAllDone(id: number): Promise<boolean>;
  /** Rechecks that are running, or planned with a bell long overdue. */
  unfinished(): Promise<readonly { readonly id: number; readonly state: 'planned' | 'running' }[]>;
  /**
   * Units in the shop, or closed within the last hour, that were last judged under an older rulebook than the newest
   * one whose recheck is done.
   */
  staleUnits(limit: number): Promise<readonly number[]>;
}
