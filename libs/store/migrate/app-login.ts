import { createHash, createHmac, pbkdf2Sync, randomBytes } from 'node:crypto';
import { Client } from 'pg';
import { APP_ROLE } from '../audit/work-as-app';

/** The name an address signs in with. */
export const userOf = (databaseUrl: string): string => decodeURIComponent(new URL(databaseUrl).username);

/**
 * Lets the programs in under their own login, with the password of their address; to be done with the address of the
 * owner of the tables, after the migrations have made the role. An address with another user is its operator's to set
 * up, and nothing is done. Throws what the database says when the owner may not.
 */
export async function letAppIn(ownerUrl: string, appUrl: string): Promise<void> {
  if (userOf(appUrl) !== APP_ROLE || userOf(ownerUrl) === APP_ROLE) return;
  const client = new Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    const secret = scramSecret(decodeURIComponent(new URL(appUrl).password));
    await client.query(`ALTER ROLE ${APP_ROLE} LOGIN PASSWORD '${secret}'`);
  } finally {
    await client.end();
  }
}

const ROUNDS = 4_096;

/** What PostgreSQL keeps of a password (RFC 5802, SCRAM-SHA-256): sent so, the password itself stands in no log of the server. */
function scramSecret(password: string): string {
  const salt = randomBytes(16);
  const salted = pbkdf2Sync(password.normalize('NFKC'), salt, ROUNDS, 32, 'sha256');
  const keyed = (text: string) => createHmac('sha256', salted).update(text).digest();
  const stored = createHash('sha256').update(keyed('Client Key')).digest('base64');
  return `SCRAM-SHA-256$${ROUNDS}:${salt.toString('base64')}$${stored}:${keyed('Server Key').toString('base64')}`;
}
