import { Inject, Injectable } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { findToken, waitBeforeTry, type ApiTokenRow, type Ports } from '../../../../libs/usecases';
import { ProblemError } from '../http/problem-error';
import { PORTS, SECURITY_LOG } from '../tokens';
import type { SecurityLog } from './security-log';

const ENDED = {
  revoked: 'was revoked',
  expired: 'has expired',
  idle: 'was made by somebody who does not work here any more',
} as const;

/** What a program brought as `Authorization: Bearer`, or null; other ways to authorise are a proxy's business. */
export function readBearer({ headers }: FastifyRequest): string | null {
  return /^Bearer +(.*)$/i.exec(headers.authorization ?? '')?.[1]?.trim() ?? null;
}

/**
 * Lets other programs in. Wrong tokens are counted for the address they come from and slow it down as wrong passwords
 * do. A right one is never held up: it cannot be guessed, and nobody else's mistakes are to lock its program out.
 */
@Injectable()
export class TokenDoor {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(SECURITY_LOG) private readonly log: SecurityLog,
  ) {}

  /** The token as it was made, when it is good. Each use is noted, without what stands behind the question mark. */
  async open(request: FastifyRequest, bearer: string): Promise<ApiTokenRow> {
    const found = await findToken(this.ports, bearer);
    if (!found) return this.refuse(request, 'There is no such token; make one under Shop, Other programs.');
    const { token, state } = found;
    if (state !== 'good')
      return this.refuse(request, `The token '${token.name}' ${ENDED[state]}; make a new one.`, token.id);
    const how = `${request.method} ${request.url.split('?')[0]} with token ${token.prefix}`;
    this.log.note({ act: 'token-used', address: request.ip, personId: token.person.id, tokenId: token.id, how });
    return token;
  }

  private async refuse(request: FastifyRequest, why: string, tokenId?: number): Promise<never> {
    const tried = { what: 'token', account: request.ip, address: request.ip, device: null } as const;
    const wait = await waitBeforeTry(this.ports, tried);
    this.log.note({ act: wait === 0 ? 'wrong-token' : 'held-up', address: request.ip, tokenId, how: 'token' });
    if (wait === 0) throw new ProblemError(401, 'wrong-token', why, {}, { 'www-authenticate': 'Bearer' });
    const seconds = Math.ceil(wait / 1_000);
    const words = `Too many wrong tokens; wait ${seconds} seconds and try again.`;
    throw new ProblemError(429, 'too-many-tries', words, {}, { 'retry-after': String(seconds) });
  }
}
