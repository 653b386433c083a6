/** Milliseconds of processor time that this process has used so far, in all its threads. */
export function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1_000;
}

/** Collects what is no longer held, so that nobody's time is charged with what another one has left behind. */
export function clearAway(): void {
  if (globalThis.gc === undefined) throw new Error('The bench needs node --expose-gc.');
  globalThis.gc();
}
