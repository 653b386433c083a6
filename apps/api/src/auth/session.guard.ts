import { Inject, Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { FastifyRequest } from 'fastify';
import { may, scopesFor, tokenMay } from '../../../../libs/contracts';
import {
  findSession,
  type ApiTokenRow,
  type PersonRow,
  type Ports,
  type SessionRules,
} from '../../../../libs/usecases';
import { ProblemError } from '../http/problem-error';
import { PORTS, SESSION_RULES } from '../tokens';
import { isPermission, PERMISSION_KEY, type RoutePermission } from './permit';
import { readSessionCookie } from './session-cookie';
import { readBearer, TokenDoor } from './token-door';

/** A request with the person it comes from, and the token of the program that asks in that person's name. */
export type SignedInRequest = FastifyRequest & { person?: PersonRow; token?: ApiTokenRow };

/**
 * Lets a request through when the person it comes from has the permission the route names. A program brings a token in
 * place of a cookie, and may do what both its scopes and the person who made it may.
 */
@Injectable()
export class SessionGuard implements CanActivate {
  constructor(
    @Inject(Reflector) private readonly reflector: Reflector,
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(SESSION_RULES) private readonly rules: SessionRules,
    @Inject(TokenDoor) private readonly tokens: TokenDoor,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const permission = this.reflector.get<RoutePermission | undefined>(PERMISSION_KEY, context.getHandler());
    if (permission === 'open') return true;
    const request = context.switchToHttp().getRequest<SignedInRequest>();
    const bearer = readBearer(request);
    if (bearer !== null) return this.letProgram(request, bearer, permission);
    const token = readSessionCookie(request);
    const person = token && (await findSession({ ...this.ports, rules: this.rules }, token));
    if (!person) throw new ProblemError(401, 'not-signed-in', 'Sign in first.');
    request.person = person;
    if (permission === 'own-sign-in') return true;
    requireSecondFactor(person);
    if (permission === 'signed-in') return true;
    if (permission === undefined || !may(person.role, permission)) {
      throw new ProblemError(403, 'not-allowed', `A ${person.role} may not do this.`);
    }
    return true;
  }

  private async letProgram(
    request: SignedInRequest,
    bearer: string,
    permission: RoutePermission | undefined,
  ): Promise<boolean> {
    const token = await this.tokens.open(request, bearer);
    Object.assign(request, { token, person: token.person });
    requireSecondFactor(token.person);
    if (!isPermission(permission) || scopesFor(permission).length === 0)
      throw new ProblemError(403, 'not-by-token', 'A person who is signed in does this; no token may.');
    if (!tokenMay(token.scopes, token.person.role, permission)) {
      const scopes = scopesFor(permission).join(' or ');
      const words = `The token '${token.name}' may not do this: it takes the scope ${scopes}, made by somebody who may.`;
      throw new ProblemError(403, 'not-allowed', words);
    }
    return true;
  }
}

function requireSecondFactor({ secondFactor }: PersonRow): void {
  if (secondFactor === 'missing')
    throw new ProblemError(403, 'second-factor-needed', 'Add a second factor first, under My sign-in.');
}
