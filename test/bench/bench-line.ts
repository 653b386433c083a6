/** One figure as it is printed. */
export interface BenchLine {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly goal: number | null;
  readonly holds: boolean;
}

/** A figure with its goal, or without one. */
export function figure(
  name: string,
  value: number,
  unit: string,
  { atMost, atLeast }: { readonly atMost?: number; readonly atLeast?: number } = {},
): BenchLine {
  const goal = atMost ?? atLeast ?? null;
  const holds = (atMost === undefined || value <= atMost) && (atLeast === undefined || value >= atLeast);
  return { name, value, unit, goal, holds };
}
