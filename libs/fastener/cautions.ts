/** Stands beside every strength figure. */
export const FASTENER_CAUTION =
  'The rule decides which part goes in; these figures only say how far off a wrong one is. Never fit a stronger ' +
  "fastener than the one required. The maker's papers, local rules and a licensed technician come first.";

/** A caution of the trade with the public paper it can be read in; `source` is null for common practice. */
export interface WorkCaution {
  signal: 'WARNING' | 'NOTICE';
  text: string;
  source: string | null;
}

/** What to print before anybody works on a shear fastener. */
export const SHEAR_WORK_CAUTIONS: readonly WorkCaution[] = [
  {
    signal: 'WARNING',
    text: 'Engine stopped, key out, controls disengaged, plug lead off (or cord out, battery out) before a hand goes near.',
    source: 'Outdoor Power Equipment Institute, snow thrower safety tips, 1995',
  },
  {
    signal: 'WARNING',
    text: 'Wait until every part has come to rest.',
    source: 'Outdoor Power Equipment Institute, snow thrower safety tips, 1995',
  },
  {
    signal: 'WARNING',
    text: 'A jam can hold energy with the engine off and turn the shaft when it comes free: clear it with a tool, never by hand or foot.',
    source: 'US Consumer Product Safety Commission, snow thrower safety tips',
  },
  {
    signal: 'WARNING',
    text: 'Driven by a tractor: disengage the drive, stop the engine, wait for the shaft, and put every shield back.',
    source: 'US Department of Labor, 29 CFR 1928.57',
  },
  {
    signal: 'WARNING',
    text: 'In the shop: isolate, lock or tag, release stored energy, and verify before work begins.',
    source: 'US Department of Labor, 29 CFR 1910.147(d)',
  },
  { signal: 'WARNING', text: 'Never fit a harder or a standard bolt in place of the shear part.', source: null },
  {
    signal: 'NOTICE',
    text: 'Do not over-tighten: a clamped or stretched fastener no longer lets go where it should.',
    source: null,
  },
];
