import type { Day } from '../../day';
import type { Verdict } from '../../fit-rules';
import type { HeldInstall } from '../ports/install-store';
import type { PlaceOfUnit } from './consequence-plan';
import type { JudgedInstall } from './judge-install';

/** What the consequences of a verdict depend on besides the install. */
export interface Circumstances {
  readonly today: Day;
  /** A unit whose recording ticket closed before this day is called only for a 'stop use'. */
  readonly lookBackFrom: Day;
  /**
   * True when everything these units hold was judged: then a flag, reason or note for a place that holds nothing
   * any more is closed too.
   */
  readonly wholeUnits: boolean;
  /** What a closing says when the answer itself changed, such as the bulletin that was withdrawn. */
  readonly because: string;
}

export function placeKey({ unitId, positionId, place }: PlaceOfUnit): string {
  return `${unitId} ${positionId} ${place}`;
}

export function byPlace<T extends PlaceOfUnit>(rows: readonly T[]): ReadonlyMap<string, readonly T[]> {
  const grouped = new Map<string, T[]>();
  for (const row of rows) {
    const list = grouped.get(placeKey(row));
    if (list) list.push(row);
    else grouped.set(placeKey(row), [row]);
  }
  return grouped;
}

/** What stands about the place; its key is made only where anything stands at all. */
export function standingAt<T>(
  standing: ReadonlyMap<string, readonly T[]>,
  { unit, positionId, place }: HeldInstall,
): readonly T[] {
  return (standing.size === 0 ? undefined : standing.get(placeKey({ unitId: unit.id, positionId, place }))) ?? [];
}

/** The places of the installs that were judged. */
export function placesOf(judged: readonly JudgedInstall[]): ReadonlySet<string> {
  return new Set(
    judged.map(({ install: { unit, positionId, place } }) => placeKey({ unitId: unit.id, positionId, place })),
  );
}

/** At the bench everything that is not plainly good is looked at. */
export function isDoubtful(verdict: Verdict): boolean {
  return verdict !== 'right' && verdict !== 'allowed';
}

/** Verdicts that say plainly: not this part. What follows from them is the deciding rule's action. */
export function isLate(verdict: Verdict): boolean {
  return verdict === 'outdated' || verdict === 'wrong';
}
