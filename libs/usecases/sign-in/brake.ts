import type { SlowingRule, Tables } from '../ports/index';
import type { Ports } from '../run';
import { hashOfToken } from './session-token';

/** What is tried: a password for a sign-in name, a code for a person whose password was right, or a program's token. */
export interface Try {
  readonly what: 'password' | 'code' | 'token';
  /** The sign-in name, the person's id, or the address a wrong token came from. */
  readonly account: string;
  /** Where from; its own count, so that one address cannot try every account. */
  readonly address: string;
  /** Token of a browser in which somebody has signed in before. */
  readonly device: string | null;
}

const MINUTE = 60_000;
const SLOWING: SlowingRule = { free: 5, firstMs: 1_000, longestMs: 15 * MINUTE };
const FROM_ONE_ADDRESS = { most: 30, windowMs: MINUTE };
const KEPT_MS = 24 * 60 * MINUTE;

/**
 * Milliseconds to wait before this try may be made; 0 when it may be made now, and then it is counted, before anything
 * is compared, so that many at once are no way round. An account has five free tries, then each doubles the wait, from
 * one second to a quarter of an hour; an address has thirty tries a minute. A browser in which the person has signed in
 * before has a count of its own: who guesses elsewhere does not lock that person out.
 */
export async function waitBeforeTry({ store, clock }: Ports, tried: Try): Promise<number> {
  const now = clock.now();
  await store.tries.forgetOlder(now - KEPT_MS);
  const wait = await store.tries.windowed(hashOfToken(windowOf(tried)), now, FROM_ONE_ADDRESS);
  return wait > 0 ? wait : store.tries.slowed(await keyOf(store, tried), now, SLOWING);
}

/** A program with a wrong token, asking on and on, does not keep the people behind the same address out. */
const windowOf = ({ what, address }: Try): string =>
  what === 'token' ? `token address ${address}` : `address ${address}`;

/** A right one ends the count of what was tried. */
export async function forgiveTries({ store }: Pick<Ports, 'store'>, tried: Try): Promise<void> {
  await store.tries.forget(await keyOf(store, tried));
}

async function keyOf({ devices }: Pick<Tables, 'devices'>, { what, account, device }: Try): Promise<string> {
  if (what !== 'password' || device === null) return hashOfToken(`${what} ${account}`);
  const known = await devices.isKnown(hashOfToken(device), account);
  return hashOfToken(known ? `${what} ${account} ${device}` : `${what} ${account}`);
}
