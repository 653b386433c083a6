import { fingerprint } from './fingerprint';

const PREFIX = 'revright.unanswered.';
/** The server keeps answers for a day; a little less, so that a key is never used after its answer was dropped. */
const KEPT_MS = 23 * 3_600_000;
/** No change is worked on for longer; a key that still stands for one then belongs to a server that went down with it. */
const LONGEST_WORK_MS = 2 * 60_000;

/** A change can hold a name and a phone number, which are not to lie about in a browser: it is told by its fingerprint. */
const nameOf = (change: string): string => PREFIX + fingerprint(change);

interface Unanswered {
  readonly key: string;
  readonly since: number;
}

/**
 * The key under which a change is sent. A change whose answer never came, the same in every word, gets the key it had,
 * also after a reload: whether the server did it then or does it now, it is done once.
 */
export function keyFor(change: string, now = Date.now()): string {
  const name = nameOf(change);
  const kept = read(name);
  if (kept !== null && now - kept.since < KEPT_MS) return kept.key;
  const key = newKey();
  localStorage.setItem(name, JSON.stringify({ key, since: now } satisfies Unanswered));
  return key;
}

/** The server has answered: the next change is another one, even if it says the same. */
export function answered(change: string): void {
  localStorage.removeItem(nameOf(change));
}

/** The first sending has not been answered yet: this is the same change, until it must have ended one way or other. */
export function stillWorkedOn(change: string, now = Date.now()): void {
  const kept = read(nameOf(change));
  if (kept !== null && now - kept.since >= LONGEST_WORK_MS) answered(change);
}

/** Drops what nobody will ask for again, so that a device does not fill up. */
export function dropOldKeys(now = Date.now()): void {
  for (const name of Object.keys(localStorage)) {
    if (!name.startsWith(PREFIX)) continue;
    const kept = read(name);
    if (kept === null || now - kept.since >= KEPT_MS) localStorage.removeItem(name);
  }
}

function read(name: string): Unanswered | null {
  try {
    return JSON.parse(localStorage.getItem(name) ?? 'null') as Unanswered | null;
  } catch {
    return null;
  }
}

/** 128 random bits as text; works over plain http too, where a browser offers no ready-made ids. */
function newKey(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
