import { useEffect, useRef, type RefObject } from 'react';

/**
 * The thing to be at once `what` has changed: what was pressed to change it may be gone by then, and the focus with it.
 * Whoever is at something else stays there.
 */
export function useArrival<T extends HTMLElement>(what: unknown): RefObject<T | null> {
  const place = useRef<T>(null);
  const before = useRef(what);
  useEffect(() => {
    if (before.current === what) return;
    before.current = what;
    if (document.activeElement === document.body) place.current?.focus();
  }, [what]);
  return place;
}
