import { createHash, randomBytes } from 'node:crypto';

/** A fresh token: 256 bits that nobody can guess, as text for a cookie. */
export function newToken(): string {
  return randomBytes(32).toString('base64url');
}

/** What the store keeps of a token, so that a copy of the table opens no door. */
export function hashOfToken(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}
