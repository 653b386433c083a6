/** Something that goes on by itself until it is closed; closing waits for the turn that is under way. */
export interface Running {
  close(): Promise<void>;
}

/**
 * Takes turns until closed. A turn that answers true is followed by the next at once; otherwise by the next after
 * `everyMs`, or as soon as `nudge` is called. A turn that throws is told to `onError` and counts as false.
 */
export function repeat(
  turn: () => Promise<boolean>,
  { everyMs, onError }: { everyMs: number; onError: (error: unknown) => void },
): Running & { nudge(): void } {
  let closed = false;
  let nudged = false;
  let wake: () => void = () => undefined;
  const rest = () =>
    new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, everyMs);
      wake = () => {
        clearTimeout(timer);
        resolve();
      };
      if (nudged || closed) wake();
    });
  const going = (async () => {
    while (!closed) {
      nudged = false;
      const more = await turn().catch((error: unknown) => {
        onError(error);
        return false;
      });
      if (!more && !closed) await rest();
    }
  })();
  return {
    nudge() {
      nudged = true;
      wake();
    },
    async close() {
      closed = true;
      wake();
      await going;
    },
  };
}
