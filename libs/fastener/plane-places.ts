import type { FastenerSpec } from './fastener-spec';
import { changesOf } from './section-at';
import type { ShearJoint } from './shear-joint';

/**
 * Every way the shear planes can lie that makes a difference to any of the fasteners: one list of places per way,
 * one place per plane. One way when the places are measured without tolerance; otherwise each stretch between two
 * changes of section stands for itself, and a comparison puts both fasteners in the same way.
 */
export function waysPlanesLie(joint: ShearJoint, specs: readonly FastenerSpec[]): number[][] {
  const changes = specs.flatMap(changesOf);
  if (joint.shearPlanesAtMm !== null) {
    const t = joint.planeToleranceMm;
    return combine(joint.shearPlanesAtMm.map((at) => placesIn(Math.max(0, at - t), at + t, changes, true)));
  }
  const places = placesIn(0, reachOf(joint, specs, changes), changes, false);
  return combine(Array.from({ length: joint.planes }, () => places));
}

/** How far along the fastener a plane can lie: within the grip, and within the shorter fastener. */
function reachOf(joint: ShearJoint, specs: readonly FastenerSpec[], changes: readonly number[]): number {
  const limits = [joint.gripMm, ...specs.map((spec) => spec.lengthMm)].filter((limit) => limit !== null);
  return limits.length > 0 ? Math.min(...limits) : Math.max(0, ...changes) + 1;
}

/**
 * The middle of each stretch between two changes, and where asked for the ends, which may lie on an edge. A change in
 * between needs no place of its own: its section is the weaker of the two stretches it parts.
 */
function placesIn(from: number, to: number, changes: readonly number[], withEnds: boolean): number[] {
  if (from >= to) return [from];
  const inside = [...new Set(changes)].filter((at) => at > from && at < to).sort((a, b) => a - b);
  const cuts = [from, ...inside, to];
  const middles = cuts.slice(1).map((cut, index) => (cut + (cuts[index] ?? from)) / 2);
  return withEnds ? [from, to, ...middles] : middles;
}

function combine(perPlane: readonly number[][]): number[][] {
  return perPlane.reduce<number[][]>((ways, places) => ways.flatMap((way) => places.map((at) => [...way, at])), [[]]);
}
