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
