import { lookup } from 'node:dns/promises';
import { request as plainRequest, type RequestOptions } from 'node:http';
import { request as tlsRequest } from 'node:https';
import { isIP, type LookupFunction } from 'node:net';
import type { Courier } from '../usecases';
import { isPublicAddress } from './is-public';

export interface CourierOptions {
  /** Hosts of the house, by name or address in small letters: they may be spoken to by http and lie anywhere. */
  readonly inHouse?: readonly string[];
  /** What a name leads to; the machine's resolver when left out. */
  readonly resolve?: (host: string) => Promise<readonly string[]>;
  /** How long a post may take in all, in milliseconds. */
  readonly patienceMs?: number;
}

const PATIENCE_MS = 10_000;

const machineResolver = async (host: string): Promise<readonly string[]> =>
  (await lookup(host, { all: true })).map(({ address }) => address);

/**
 * Posts to addresses that a person typed. A name is resolved once, every address it leads to must be public, and the
 * connection goes to those very addresses: a second answer of the name server is never asked for. No redirect is followed,
 * no connection kept, no answer read beyond its head.
 */
export function openCourier({
  inHouse = [],
  resolve = machineResolver,
  patienceMs = PATIENCE_MS,
}: CourierOptions = {}): Courier {
  const isInHouse = (url: URL): boolean => inHouse.includes(hostOf(url));
  const whyNot = (url: URL): string | null => {
    const host = hostOf(url);
    if (isInHouse(url)) return null;
    if (url.protocol !== 'https:')
      return `'${url.protocol}//${host}' is not spoken to in the open; expected https, or a host that WEBHOOK_IN_HOUSE names.`;
    return isIP(host) !== 0 && !isPublicAddress(host) ? sayInside(host, host) : null;
  };
  return {
    whyNot: (text) => whyNot(new URL(text)),
    async post(text, body, headers) {
      const url = new URL(text);
      const why = whyNot(url);
      if (why !== null) return { kind: 'failed', why };
      const signal = AbortSignal.timeout(patienceMs);
      try {
        const addresses = await inTime(resolved(hostOf(url), resolve), signal);
        const inside = isInHouse(url) ? undefined : addresses.find((address) => !isPublicAddress(address));
        if (inside !== undefined) return { kind: 'failed', why: sayInside(hostOf(url), inside) };
        return { kind: 'answered', status: await posted(url, { body, headers, addresses, signal }) };
      } catch (error) {
        return { kind: 'failed', why: sayError(url, error, patienceMs) };
      }
    },
  };
}

/** In small letters, an IPv6 address without its brackets. */
const hostOf = (url: URL): string => url.hostname.toLowerCase().replace(/^\[|\]$/g, '');

const sayInside = (host: string, address: string): string =>
  `'${host}' leads to ${address}, which is no public address; expected one, or a host that WEBHOOK_IN_HOUSE names.`;

async function resolved(
  host: string,
  resolve: (host: string) => Promise<readonly string[]>,
): Promise<readonly string[]> {
  const addresses = isIP(host) === 0 ? await resolve(host) : [host];
  if (addresses.length === 0) throw new Error('its name leads nowhere');
  return addresses;
}

function inTime<T>(work: Promise<T>, signal: AbortSignal): Promise<T> {
  return Promise.race([
    work,
    new Promise<never>((_, reject) => signal.addEventListener('abort', () => reject(signal.reason as Error))),
  ]);
}

interface Post {
  readonly body: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly addresses: readonly string[];
  readonly signal: AbortSignal;
}

/** Posts over a connection to one of the addresses and no other; answers the status. */
function posted(url: URL, { body, headers, addresses, signal }: Post): Promise<number> {
  const known = addresses.map((address) => ({ address, family: isIP(address) }));
  const pinned: LookupFunction = (_host, options, answer) =>
    options.all ? answer(null, known) : answer(null, known[0]!.address, known[0]!.family);
  const options: RequestOptions = {
    method: 'POST',
    agent: false,
    lookup: pinned,
    signal,
    headers: {
      ...headers,
      'content-type': 'application/json',
      'content-length': Buffer.byteLength(body),
      'user-agent': 'Revright',
    },
  };
  return new Promise((resolve, reject) => {
    const request = (url.protocol === 'https:' ? tlsRequest : plainRequest)(url, options, (response) => {
      resolve(response.statusCode ?? 0);
      response.destroy();
    });
    request.once('error', reject);
    request.end(body);
  });
}

function sayError(url: URL, error: unknown, patienceMs: number): string {
  const { name, code, message } = error as NodeJS.ErrnoException;
  if (name === 'TimeoutError' || name === 'AbortError' || code === 'ABORT_ERR')
    return `'${hostOf(url)}' did not answer within ${patienceMs / 1_000} seconds.`;
  return `'${hostOf(url)}' was not reached: ${code ?? message}.`;
}
