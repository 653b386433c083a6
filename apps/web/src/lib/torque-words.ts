/** A torque in newton metres, to three figures at most. */
export function sayNewtonMetres(torque: number): string {
  return `${round(torque)} N·m`;
}

/** A torque range: `85 N·m`, or `85 to 120 N·m` when the ends differ after rounding. */
export function sayRange({ low, high }: { low: number; high: number }): string {
  return round(low) === round(high) ? sayNewtonMetres(low) : `${round(low)} to ${round(high)} N·m`;
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}
