import { AsyncLocalStorage } from 'node:async_hooks';
import { randomUUID } from 'node:crypto';
import type { IncomingMessage } from 'node:http';
import { ConsoleLogger } from '@nestjs/common';
import type { FastifyInstance } from 'fastify';

/** What a proxy or a program may call its request; anything else could be a sentence, or a person. */
const WELL_FORMED = /^[A-Za-z0-9_-]{8,64}$/;

const current = new AsyncLocalStorage<string>();

/** The id that the request brought as `x-request-id`, where it is well formed; else a new one. */
export function requestIdOf({ headers }: Pick<IncomingMessage, 'headers'>): string {
  const brought = headers['x-request-id'];
  return typeof brought === 'string' && WELL_FORMED.test(brought) ? brought : randomUUID();
}

/** The id of the request that is being answered; undefined for work outside of any. */
export const currentRequestId = (): string | undefined => current.getStore();

/** Answers each request with its id, and lets everything that is done for it know it. */
export function nameRequests(fastify: FastifyInstance): void {
  fastify.addHook('onRequest', (request, reply, done) => {
    reply.header('x-request-id', request.id);
    current.run(request.id, done);
  });
}

/** One JSON object a line, each with the id of its request: a line break in what is told cannot pass for a line. */
export class RequestLogger extends ConsoleLogger {
  protected override getJsonLogObject(...told: Parameters<ConsoleLogger['getJsonLogObject']>) {
    const requestId = currentRequestId();
    return { ...super.getJsonLogObject(...told), ...(requestId === undefined ? {} : { requestId }) };
  }
}
