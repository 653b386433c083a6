import type { FastifyReply, FastifyRequest } from 'fastify';

/**
 * The session; the first step of a sign-in that waits for its code; the browser as one that somebody has signed in with;
 * what is remembered while somebody is at another sign-in.
 */
export type CookieOf = 'session' | 'step' | 'device' | 'elsewhere';

const SUFFIX: Readonly<Record<CookieOf, string>> = {
  session: '',
  step: '-step',
  device: '-device',
  elsewhere: '-elsewhere',
};
const LONGEST = { session: 200, step: 200, device: 200, elsewhere: 2_000 };

/** Over https the name itself keeps other hosts of the domain from setting it; plain http cannot use that name. */
const nameFor = (request: FastifyRequest, of: CookieOf): string =>
  `${request.protocol === 'https' ? '__Host-' : ''}revright${SUFFIX[of]}`;

const options = (request: FastifyRequest) => ({
  path: '/',
  httpOnly: true,
  sameSite: 'strict' as const,
  secure: request.protocol === 'https',
});

/** What the request brought in that cookie, or null; of two that differ nobody can say which one is meant. */
export function readCookie(request: FastifyRequest, of: CookieOf): string | null {
  const name = nameFor(request, of);
  const token = request.cookies[name];
  if (!token || token.length > LONGEST[of]) return null;
  const brought = (request.headers.cookie ?? '').split(';').filter((pair) => pair.split('=')[0]!.trim() === name);
  return new Set(brought.map((pair) => pair.trim())).size === 1 ? token : null;
}

/** Sets it until the browser is closed, or for so many milliseconds. */
export function setCookie(
  request: FastifyRequest,
  reply: FastifyReply,
  { of, token, forMs }: { of: CookieOf; token: string; forMs?: number },
): void {
  const lasts = forMs === undefined ? {} : { maxAge: Math.floor(forMs / 1_000) };
  void reply.setCookie(nameFor(request, of), token, { ...options(request), ...lasts });
}

export function clearCookie(request: FastifyRequest, reply: FastifyReply, of: CookieOf): void {
  void reply.clearCookie(nameFor(request, of), options(request));
}

/** The session's token as the request brought it, or null. */
export const readSessionCookie = (request: FastifyRequest): string | null => readCookie(request, 'session');
