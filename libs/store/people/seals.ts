import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';
import { keyBeforeOf, keyOf, type Config } from '../../config';
import type { Seals } from '../../usecases';

const ALGORITHM = 'aes-256-gcm';
const NONCE_BYTES = 12;
const TAG_BYTES = 16;

/** Seals under the key of today, and opens with that of before while what it sealed is sealed anew. */
export const sealsOf = (config: Partial<Pick<Config, 'key' | 'keyBefore' | 'dataFolder'>>): Seals =>
  sealsWith(() => keyOf(config), keyBeforeOf(config));

/**
 * Seals with AES-256-GCM under a key of 32 bytes, which is asked for when it is first needed: nonce, tag and text, as
 * base64url behind the name of the form. What it is about is authenticated with it. With a key from before it opens what
 * that one sealed, and seals nothing with it.
 */
export function sealsWith(key: () => Buffer, before?: Buffer): Seals {
  let known: Buffer | undefined;
  const theKey = () => (known ??= key());
  const open: Seals['open'] = (sealed, about) =>
    opened(sealed, about, theKey()) ?? (before ? opened(sealed, about, before) : null);
  const seal: Seals['seal'] = (text, about) => {
    const nonce = randomBytes(NONCE_BYTES);
    const cipher = createCipheriv(ALGORITHM, theKey(), nonce).setAAD(Buffer.from(about));
    const body = Buffer.concat([cipher.update(text, 'utf8'), cipher.final()]);
    return `${FORM}${Buffer.concat([nonce, cipher.getAuthTag(), body]).toString('base64url')}`;
  };
  return {
    seal,
    open,
    renew(sealed, about) {
      if (opened(sealed, about, theKey()) !== null) return null;
      const text = open(sealed, about);
      return text === null ? null : seal(text, about);
    },
  };
}

function opened(sealed: string, about: string, key: Buffer): string | null {
  const bytes = Buffer.from(sealed.slice(FORM.length), 'base64url');
  if (!sealed.startsWith(FORM) || bytes.length < NONCE_BYTES + TAG_BYTES) return null;
  const [nonce, rest] = [bytes.subarray(0, NONCE_BYTES), bytes.subarray(NONCE_BYTES)];
  const opener = createDecipheriv(ALGORITHM, key, nonce, { authTagLength: TAG_BYTES });
  opener.setAAD(Buffer.from(about)).setAuthTag(rest.subarray(0, TAG_BYTES));
  try {
    return Buffer.concat([opener.update(rest.subarray(TAG_BYTES)), opener.final()]).toString('utf8');
  } catch {
    return null;
  }
}

const FORM = '1.';
