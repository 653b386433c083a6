/**
 * What is left of a 60 degree thread, as the diameter of a circle: d − factor × pitch. Three minor diameters are in
 * use for one thread, and they differ by several percent, so a result names the one it used.
 */
export const THREAD_SECTIONS = {
  'root-1.2269': {
    factor: 1.226869,
    words: 'thread root, d − 1.2269 P',
    source: 'ISO 724 profile with the rounded root of ISO 898-1 (d3); the unified UNR root',
  },
  'root-1.2990': {
    factor: 1.299038,
    words: 'thread root, d − 1.2990 P',
    source: 'older unified external thread with a sharper root (1/4-20: 0.0269 in²)',
  },
  'stress-area-metric': {
    factor: 0.938194,
    words: 'stress area, d − 0.9382 P',
    source: 'ISO 898-1, nominal stress area',
  },
  'stress-area-inch': {
    factor: 0.974279,
    words: 'stress area, d − 0.9743 P',
    source: 'ASME B1.1 appendix B, tensile stress area',
  },
} as const;

export type ThreadSectionName = keyof typeof THREAD_SECTIONS;

/** The root is the section a shear plane in the thread cuts, and the weakest of the common choices for UNR. */
export const USUAL_THREAD_SECTION: ThreadSectionName = 'root-1.2269';

/** Diameter in mm of the circle that stands for the thread, both arguments in mm. */
export function threadDiameterMm(diameterMm: number, pitchMm: number, name: ThreadSectionName): number {
  return diameterMm - THREAD_SECTIONS[name].factor * pitchMm;
}

/** Area of a circle in mm². */
export function circleAreaMm2(diameterMm: number): number {
  return (Math.PI / 4) * diameterMm * diameterMm;
}

/** Area in mm² of the strip of width `widthMm` through the middle of a circle: what a cross hole takes at its axis. */
export function stripAreaMm2(diameterMm: number, widthMm: number): number {
  if (widthMm >= diameterMm) return circleAreaMm2(diameterMm);
  const [r, half] = [diameterMm / 2, widthMm / 2];
  return 2 * (half * Math.sqrt(r * r - half * half) + r * r * Math.asin(half / r));
}

/** Area in mm² of the thread section: π/4 (d − factor × P)². */
export function threadAreaMm2(diameterMm: number, pitchMm: number, name: ThreadSectionName): number {
  return circleAreaMm2(threadDiameterMm(diameterMm, pitchMm, name));
}
