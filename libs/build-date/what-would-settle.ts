import { intersectionOf, measureOf, type Day, type DaySet } from '../day';
import { boundsOf } from './bounds';
import type { EvidenceKind } from './evidence';
import type { PreparedShop } from './prepare-shop';
import { read } from './read-evidence';
import { READING_EFFORT, WHERE_TO_LOOK } from './reading-effort';
import type { OutcomeCut, Settling, SettlingKind } from './settle';
import { typicalEvidence } from './typical-evidence';

/** Build days tried for each kind, spread evenly over the possible ones. */
const TRIALS = 240;
const RANK = { sure: 0, likely: 1, possible: 2 } as const;

const NO_DAY_LEFT = 'No possible build day is left: the evidence conflicts, and that has to be settled first.';

export interface SettlingQuestion {
  /** The possible build days, cut where the outcome of the ruling changes. */
  readonly cuts: readonly OutcomeCut[];
  /** Kinds the unit may bear that are not read yet. */
  readonly missing: readonly EvidenceKind[];
  readonly maker: string;
  readonly line?: string | undefined;
  readonly shop: PreparedShop;
  readonly today: Day;
}

/** Cuts possible days at the given days, each stretch an outcome of its own; a boundary is the first day of the later stretch. */
export function cutAt(days: DaySet, boundaries: readonly Day[]): OutcomeCut[] {
  const edges = [-Infinity, ...new Set([...boundaries].sort((a, b) => a - b)), Infinity];
  return edges
    .slice(1)
    .map((to, at) => ({ days: intersectionOf(days, [{ from: edges[at]!, to }]), outcome: String(at) }))
    .filter((cut) => cut.days.length > 0);
}

/**
 * Which evidence would leave one outcome: kinds that surely would come first, then the likely, then the possible,
 * and among equals the one that is cheapest to read. When every possible day has the same outcome none is needed.
 *
 * With no possible day left the conflict comes first, and no further evidence is named.
 *
 * How surely is found by trial: for possible build days spread over the cuts, the reading a unit of that day would
 * typically bear is made and combined with what is known. Every reading that day could give must leave one outcome.
 */
export function whatWouldSettle(question: SettlingQuestion): Settling {
  const cuts = question.cuts.filter((cut) => cut.days.length > 0);
  if (cuts.length === 0) return { needed: true, kinds: [], sentence: NO_DAY_LEFT };
  if (new Set(cuts.map((cut) => cut.outcome)).size <= 1)
    return {
      needed: false,
      kinds: [],
      sentence: 'The date is not needed: every possible build day gives the same answer.',
    };
  const kinds = [...new Set(question.missing)]
    .map((kind) => weigh(kind, cuts, question))
    .filter((kind): kind is SettlingKind => kind !== null)
    .sort((a, b) => RANK[a.sureness] - RANK[b.sureness] || a.effort - b.effort || b.share - a.share);
  return {
    needed: true,
    kinds,
    sentence: kinds[0]?.sentence ?? 'No evidence known for this maker would settle it; ask the maker.',
  };
}

function weigh(kind: EvidenceKind, cuts: readonly OutcomeCut[], question: SettlingQuestion): SettlingKind | null {
  const trials = trialDays(cuts);
  const share = trials.filter((built) => leavesOneOutcome(kind, built, cuts, question)).length / trials.length;
  if (share === 0) return null;
  const sureness = share === 1 ? 'sure' : share >= 0.5 ? 'likely' : 'possible';
  const promise = {
    sure: 'it leaves one answer',
    likely: 'it probably leaves one answer',
    possible: 'it may leave one answer',
  };
  return {
    kind,
    share,
    sureness,
    effort: READING_EFFORT[kind],
    sentence: `${WHERE_TO_LOOK[kind]}; ${promise[sureness]}.`,
  };
}

function leavesOneOutcome(
  kind: EvidenceKind,
  built: Day,
  cuts: readonly OutcomeCut[],
  question: SettlingQuestion,
): boolean {
  const { maker, line, shop, today } = question;
  const readings = typicalEvidence(kind, built, { maker, line }, shop).map((piece) =>
    read(piece, shop, boundsOf(today)),
  );
  return (
    readings.length > 0 &&
    readings.every(({ days, problem }) => {
      if (problem !== null) return false;
      const left = cuts.filter((cut) => intersectionOf(cut.days, days).length > 0);
      return new Set(left.map((cut) => cut.outcome)).size === 1;
    })
  );
}

/** Days spread evenly over all cuts, so that a longer stretch is tried more often; each cut at least once. */
function trialDays(cuts: readonly OutcomeCut[]): Day[] {
  const total = cuts.reduce((sum, cut) => sum + measureOf(cut.days), 0);
  const step = Math.max(1, Math.floor(total / TRIALS));
  return cuts.flatMap((cut) => cut.days.flatMap((span) => daysOfSpan(span.from, span.to, step)));
}

function daysOfSpan(from: Day, to: Day, step: number): Day[] {
  const count = Math.ceil((to - from) / step);
  return Array.from({ length: count }, (_, at) => from + at * step);
}
