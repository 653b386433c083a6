/** Round marks of an axis from 0, of which the last lies above `most`; between three and six steps. */
export function axisTicks(most: number): number[] {
  const power = 10 ** Math.floor(Math.log10(most));
  const step = [0.2, 0.5, 1, 2, 5].map((part) => part * power).find((one) => most / one < 6) ?? 10 * power;
  const steps = Math.floor(most / step) + 1;
  return Array.from({ length: steps + 1 }, (_, i) => Number((i * step).toPrecision(6)));
}
