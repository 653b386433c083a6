import { torqueIn } from '../../../../libs/fastener';

/** The unit a torque is written in first; the other stands beside it. */
export type FirstUnit = 'N·m' | 'lbf·ft';

const OTHER: Record<FirstUnit, FirstUnit> = { 'N·m': 'lbf·ft', 'lbf·ft': 'N·m' };

/** A torque or a range of torques in N·m, said in both units: `85 N·m (62.7 lbf·ft)`, `85 to 120 N·m (62.7 to 88.5 lbf·ft)`. */
export function sayTorque(nm: { low: number; high: number }, first: FirstUnit): string {
  return `${sayIn(nm, first)} (${sayIn(nm, OTHER[first])})`;
}

function sayIn({ low, high }: { low: number; high: number }, unit: FirstUnit): string {
  const [from, to] = [figures(torqueIn(low, unit)), figures(torqueIn(high, unit))];
  return `${from === to ? from : `${from} to ${to}`} ${unit}`;
}

/** Three figures are more than a shear pin holds to. */
function figures(value: number): number {
  return Number(value.toPrecision(3));
}

/** Round marks of an axis from 0, of which the last lies above `most`; between three and six steps. */
export function axisTicks(most: number): number[] {
  const power = 10 ** Math.floor(Math.log10(most));
  const step = [0.2, 0.5, 1, 2, 5].map((part) => part * power).find((one) => most / one < 6) ?? 10 * power;
  const steps = Math.floor(most / step) + 1;
  return Array.from({ length: steps + 1 }, (_, i) => Number((i * step).toPrecision(6)));
}
