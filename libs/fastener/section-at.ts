import type { FastenerSpec } from './fastener-spec';
import type { Range } from './shear-joint';
import {
  circleAreaMm2,
  stripAreaMm2,
  THREAD_SECTIONS,
  threadDiameterMm,
  type ThreadSectionName,
} from './thread-section';
import { sayLength } from './units';

/** The section a shear plane cuts. */
export interface Section {
  kind: 'shank' | 'thread' | 'groove' | 'cross-hole';
  areaMm2: number;
  /** Which section, by which formula, of which size. */
  words: string;
}

/** Edges count as inside, so a plane on the edge of a groove is cut at its bottom; rounding must not move it. */
const EDGE_MM = 1e-6;

/**
 * The weakest section at a place under the head. Two where the thread is there but nobody knows where it starts:
 * with the thread in the plane, and without. Edges of groove, hole and thread belong to them.
 */
export function sectionsAt(spec: FastenerSpec, atMm: number, thread: ThreadSectionName): Section[] {
  const covering = [shankOf(spec), ...grooveAt(spec, atMm), ...holeAt(spec, atMm)];
  if (spec.thread === null) return [weakest(covering)];
  const withThread = weakest([...covering, threadOf(spec, spec.thread.pitchMm, thread)]);
  if (spec.thread.startsAtMm === null) return [withThread, weakest(covering)];
  return [atMm >= spec.thread.startsAtMm - EDGE_MM ? withThread : weakest(covering)];
}

/** The places along the fastener where the section changes. */
export function changesOf(spec: FastenerSpec): number[] {
  const { groove, crossHole, thread } = spec;
  const span = (middle: number, width: number): number[] => [middle - width / 2, middle + width / 2];
  return [
    ...(groove ? span(groove.atMm, groove.widthMm) : []),
    ...(crossHole ? span(crossHole.atMm, crossHole.diameterMm) : []),
    ...(thread?.startsAtMm ? [thread.startsAtMm] : []),
  ];
}

/** Least and greatest area of a list of sections. */
export function areaRange(sections: readonly Section[]): Range {
  const areas = sections.map((section) => section.areaMm2);
  return { low: Math.min(...areas), high: Math.max(...areas) };
}

function weakest(sections: readonly Section[]): Section {
  return sections.reduce((least, section) => (section.areaMm2 < least.areaMm2 ? section : least));
}

function solid(spec: FastenerSpec, outerMm: number): number {
  return circleAreaMm2(outerMm) - circleAreaMm2(Math.min(spec.boreDiameterMm ?? 0, outerMm));
}

function shankOf(spec: FastenerSpec): Section {
  const bored = spec.boreDiameterMm === null ? '' : `, bored ${sayLength(spec.boreDiameterMm)}`;
  return {
    kind: 'shank',
    areaMm2: solid(spec, spec.diameterMm),
    words: `plain shank, ${sayLength(spec.diameterMm)}${bored}`,
  };
}

function threadOf(spec: FastenerSpec, pitchMm: number, name: ThreadSectionName): Section {
  const diameter = threadDiameterMm(spec.diameterMm, pitchMm, name);
  return {
    kind: 'thread',
    areaMm2: solid(spec, diameter),
    words: `${THREAD_SECTIONS[name].words}, ${sayLength(diameter)}`,
  };
}

function grooveAt(spec: FastenerSpec, atMm: number): Section[] {
  const { groove } = spec;
  if (groove === null || Math.abs(atMm - groove.atMm) > groove.widthMm / 2 + EDGE_MM) return [];
  const words = `bottom of the groove, ${sayLength(groove.rootDiameterMm)}`;
  return [{ kind: 'groove', areaMm2: solid(spec, groove.rootDiameterMm), words }];
}

function holeAt(spec: FastenerSpec, atMm: number): Section[] {
  const { crossHole, diameterMm } = spec;
  if (crossHole === null || Math.abs(atMm - crossHole.atMm) > crossHole.diameterMm / 2 + EDGE_MM) return [];
  const bore = Math.min(spec.boreDiameterMm ?? 0, diameterMm);
  const taken =
    stripAreaMm2(diameterMm, crossHole.diameterMm) - (bore > 0 ? stripAreaMm2(bore, crossHole.diameterMm) : 0);
  const words = `shank less its cross hole, ${sayLength(crossHole.diameterMm)} through ${sayLength(diameterMm)}`;
  return [{ kind: 'cross-hole', areaMm2: solid(spec, diameterMm) - taken, words }];
}
