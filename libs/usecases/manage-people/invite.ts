import type { Tables } from '../ports/index';
import { hashOfToken, newToken } from '../sign-in/session-token';

/** How long a one-time link can be used. */
const LINK_MS = 24 * 3_600_000;

/** A link that was just made; its token is in it and kept nowhere else. */
export interface OneTimeLink {
  /** Path and fragment; a fragment is sent to no server and so stands in no log. */
  readonly link: string;
  /** Epoch milliseconds. */
  readonly until: number;
}

/** Makes a one-time link for a person, in place of an earlier one. */
export async function invite(tx: Pick<Tables, 'people'>, personId: number, now: number): Promise<OneTimeLink> {
  const token = newToken();
  const until = now + LINK_MS;
  await tx.people.invite(personId, hashOfToken(token), until);
  return { link: `/welcome#${token}`, until };
}
