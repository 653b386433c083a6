import { useState } from 'react';

/** The fields of a form about something settled, and whether somebody else settled it anew since they were filled. */
export interface Filled<T, F> {
  readonly typed: F;
  setTyped: (next: F | ((now: F) => F)) => void;
  /** The version the fields were filled from: what is kept is kept on this one. */
  readonly version: number;
  /** How things stand now, when that is no longer what the fields were filled from; else null. */
  readonly overtakenBy: T | null;
  /** Fills the fields anew. */
  fill: (from: T) => void;
  /** Leaves the fields as typed and takes note of how things stand now. */
  keepMine: () => void;
}

/**
 * Remembers from which version the fields were filled, however often the page asks for the present state meanwhile.
 * Where the version is of more than what the fields are about, `same` says whether a newer one says the same about it:
 * then nobody was quicker.
 */
export function useFilled<T extends { version: number }, F>(
  now: T,
  read: (from: T) => F,
  same: (one: T, other: T) => boolean = () => false,
): Filled<T, F> {
  const [typed, setTyped] = useState(() => read(now));
  const [from, setFrom] = useState(now);
  const overtaken = now.version > from.version && !same(now, from);
  return {
    typed,
    setTyped,
    version: overtaken ? from.version : Math.max(from.version, now.version),
    overtakenBy: overtaken ? now : null,
    fill: (anew) => {
      setTyped(() => read(anew));
      setFrom(anew);
    },
    keepMine: () => setFrom(now),
  };
}
