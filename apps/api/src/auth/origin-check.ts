import type { FastifyInstance, FastifyRequest } from 'fastify';
import { ProblemError } from '../http/problem-error';

const SAFE = ['GET', 'HEAD', 'OPTIONS'];

/**
 * Refuses a change that another site's page asks for. Browsers say where a request comes from in Sec-Fetch-Site, older
 * ones at least in Origin; a request with neither comes from no browser and carries no one's cookie by itself.
 */
export function refuseOtherSites(fastify: FastifyInstance): void {
  fastify.addHook('onRequest', (request, _reply, next) => {
    next(SAFE.includes(request.method) || isOurs(request) ? undefined : otherSite());
  });
}

function otherSite(): ProblemError {
  return new ProblemError(403, 'other-site', 'This change was asked for by a page of another site.');
}

function isOurs({ headers }: FastifyRequest): boolean {
  const site = headers['sec-fetch-site'];
  if (site !== undefined) return site === 'same-origin' || site === 'none';
  const { origin, host } = headers;
  if (origin === undefined) return true;
  return URL.canParse(origin) && new URL(origin).host === host;
}
