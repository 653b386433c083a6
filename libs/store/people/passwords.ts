import { hash, verify } from '@node-rs/argon2';
import type { Passwords } from '../../usecases';

// argon2id with the parameters OWASP's Password Storage Cheat Sheet names: 19 MiB, two passes, one lane.
const PARAMETERS = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };
const AT_ONCE = 2;
const LONGEST_QUEUE = 20;

/** Too many people sign in at the same moment; asking again a little later will do. */
export class PasswordsBusyError extends Error {
  constructor() {
    super('too many passwords are being checked at once');
  }
}

let running = 0;
const waiting: (() => void)[] = [];

/** Hashing costs memory and a core, so at most two run at once and at most twenty wait. */
async function inTurn<T>(work: () => Promise<T>): Promise<T> {
  if (running >= AT_ONCE) {
    if (waiting.length >= LONGEST_QUEUE) throw new PasswordsBusyError();
    await new Promise<void>((resolve) => waiting.push(resolve));
  } else running++;
  try {
    return await work();
  } finally {
    const next = waiting.shift();
    if (next) next();
    else running--;
  }
}

/** The argon2id hash of a password, with its salt and parameters in it. */
export function hashPassword(password: string): Promise<string> {
  return inTurn(() => hash(password, PARAMETERS));
}

let nobodysHash: Promise<string> | null = null;

export const passwords: Passwords = {
  hash: hashPassword,
  async verify(stored, password) {
    nobodysHash ??= hashPassword('the password of nobody');
    const against = stored ?? (await nobodysHash);
    const matches = await inTurn(() => verify(against, password).catch(() => false));
    return stored !== null && matches;
  },
};
