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

/** Remembers from which version the fields were filled, however often the page asks for the present state meanwhile. */
export function useFilled<T extends { version: number }, F>(now: T, read: (from: T) => F): Filled<T, F> {
  const [typed, setTyped] = useState(() => read(now));
  const [version, setVersion] = useState(now.version);
  return {
    typed,
    setTyped,
    version,
    overtakenBy: now.version > version ? now : null,
    fill: (from) => {
      setTyped(() => read(from));
      setVersion(from.version);
    },
    keepMine: () => setVersion(now.version),
  };
}
