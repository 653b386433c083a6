import type { FastifyReply, FastifyRequest } from 'fastify';

/** Over https the name itself keeps other hosts of the domain from setting it; plain http cannot use that name. */
const nameFor = (request: FastifyRequest): string => (request.protocol === 'https' ? '__Host-revright' : 'revright');

const options = (request: FastifyRequest) => ({
  path: '/',
  httpOnly: true,
  sameSite: 'strict' as const,
  secure: request.protocol === 'https',
});

/** The session's token as the request brought it, or null. */
export function readSessionCookie(request: FastifyRequest): string | null {
  const token = request.cookies[nameFor(request)];
  return token && token.length <= 200 ? token : null;
}

export function setSessionCookie(request: FastifyRequest, reply: FastifyReply, token: string): void {
  void reply.setCookie(nameFor(request), token, options(request));
}

export function clearSessionCookie(request: FastifyRequest, reply: FastifyReply): void {
  void reply.clearCookie(nameFor(request), options(request));
}
