/** Milliseconds of processor time that this process has used so far, in all its threads. */
export function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1_000;
}
