import type { Ports } from '../run';
import { hashOfToken, newToken } from './session-token';

/** How long a browser is known without a sign-in in it. */
export const DEVICE_MS = 90 * 24 * 3_600_000;

/** Knows the browser in which somebody has just signed in; answers its new token. */
export async function knowDevice({ store, clock }: Ports, personId: number, token: string | null): Promise<string> {
  const next = newToken();
  const at = clock.now();
  await store.devices.removeOlder(at - DEVICE_MS);
  await store.devices.renew({ oldHash: token && hashOfToken(token), newHash: hashOfToken(next), personId, at });
  return next;
}
