import { useEffect, useState, type Dispatch, type SetStateAction } from 'react';

const PREFIX = 'revright.draft.';

function readDraft<T>(key: string, fallback: T): T {
  try {
    const kept = localStorage.getItem(PREFIX + key);
    return kept === null ? fallback : (JSON.parse(kept) as T);
  } catch {
    return fallback;
  }
}

/** Forgets what was kept under the key, once it has reached the server. */
export function forgetDraft(key: string): void {
  localStorage.removeItem(PREFIX + key);
}

/** What is begun at the intake was once kept here, with the owner's name; the server keeps it now. */
export function dropIntakeDraft(): void {
  forgetDraft('intake');
}

/** Whose drafts lie on the device. */
const OWNER = 'revright.drafts-of';

/**
 * Who is at the page from now on; null when somebody has signed out. Drafts are of the one who typed them, so they go with
 * that person. None is about an owner: what is kept in a browser may lie open to whoever sits down at it. A sign-in that has merely run out leaves them for the same person's next.
 */
export function draftsAreOf(personId: number | null): void {
  if (String(personId) !== localStorage.getItem(OWNER))
    for (const name of Object.keys(localStorage)) if (name.startsWith(PREFIX)) localStorage.removeItem(name);
  if (personId === null) localStorage.removeItem(OWNER);
  else localStorage.setItem(OWNER, String(personId));
}

/** As useState, and kept on the device under `key`, so that a reload or a dead network loses nothing typed. */
export function useDraft<T>(key: string, initial: T): [T, Dispatch<SetStateAction<T>>, () => void] {
  const [start] = useState(initial);
  const [value, setValue] = useState<T>(() => readDraft(key, initial));
  useEffect(() => {
    if (value === start) return;
    localStorage.setItem(PREFIX + key, JSON.stringify(value));
  }, [key, value, start]);
  const forget = () => {
    forgetDraft(key);
    setValue(start);
  };
  return [value, setValue, forget];
}

interface Written<T> {
  /** what stood on the server when it was written, as JSON */
  readonly over: string;
  readonly value: T;
}

/**
 * As {@link useDraft} for what is on record already: what was typed over it comes back after a reload, unless somebody
 * has changed the record meanwhile; then the record is shown. The third is to be called once the server has kept it.
 */
export function useDraftOver<T>(key: string, record: T): [T, (value: T) => void, () => void] {
  const [over] = useState(() => JSON.stringify(record));
  const [value, setValue] = useState<T>(() => {
    const written = readDraft<Written<T> | null>(key, null);
    if (written?.over === over) return written.value;
    forgetDraft(key);
    return record;
  });
  const write = (next: T) => {
    setValue(next);
    localStorage.setItem(PREFIX + key, JSON.stringify({ over, value: next } satisfies Written<T>));
  };
  return [value, write, () => forgetDraft(key)];
}
