import type { Range } from './shear-joint';
import { torqueIn } from './units';

/** Three figures are more than a shear pin holds to. */
function figures(value: number): string {
  return String(Number(value.toPrecision(3)));
}

/** A torque for the bench: `185 N·m (136 lbf·ft)`, or `150 to 185 N·m (110 to 136 lbf·ft)`. */
export function sayTorque(nm: Range): string {
  const feet = { low: torqueIn(nm.low, 'lbf·ft'), high: torqueIn(nm.high, 'lbf·ft') };
  return `${sayRange(nm)} N·m (${sayRange(feet)} lbf·ft)`;
}

/** A range of plain numbers: `1.62`, or `0.811 to 1.62`. */
export function sayRange({ low, high }: Range): string {
  const [from, to] = [figures(low), figures(high)];
  return from === to ? from : `${from} to ${to}`;
}
