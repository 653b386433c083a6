/** One line of the checklist that comes before any work on the machine. */
export interface SafetyPoint {
  readonly id: string;
  readonly sentence: string;
}

/** Common practice of the trade, no source. The maker's papers and local rules come first. */
export const SAFETY_POINTS: readonly SafetyPoint[] = [
  { id: 'makers-papers', sentence: "Maker's papers and local rules read first; they come before anything shown here." },
  { id: 'engine-stopped', sentence: 'Engine stopped.' },
  { id: 'key-or-lead-off', sentence: 'Key taken out, or spark plug lead off and held away from the plug.' },
  { id: 'at-rest', sentence: 'All moving parts at rest.' },
  { id: 'energy-released', sentence: 'Stored energy released: springs, raised parts, hydraulic pressure.' },
  { id: 'never-stronger', sentence: 'Never fit a stronger fastener than the one required.' },
];

/** The points not ticked yet, in order. */
export function safetyStillOpen(ticked: readonly string[]): readonly SafetyPoint[] {
  return SAFETY_POINTS.filter((point) => !ticked.includes(point.id));
}
