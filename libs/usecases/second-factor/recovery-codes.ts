import { randomInt } from 'node:crypto';
import { hashOfToken } from '../sign-in/session-token';

const HOW_MANY = 10;
const GROUPS = 6;
/** Letters and digits that cannot be taken for one another. 24 of these 31 are 118 random bits, so a fast hash will do. */
const LETTERS = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';

/** Fresh recovery codes as they are written down, such as `7K2M-...`. */
export function newRecoveryCodes(): string[] {
  return Array.from({ length: HOW_MANY }, () => Array.from({ length: GROUPS }, group).join('-'));
}

/** What is kept of one; dashes, blanks and small letters make no difference. */
export function hashOfRecovery(code: string): string {
  return hashOfToken(code.toUpperCase().replaceAll(/[^0-9A-Z]/g, ''));
}

const group = (): string => Array.from({ length: 4 }, () => LETTERS[randomInt(LETTERS.length)]).join('');
