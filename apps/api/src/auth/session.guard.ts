import { Inject, Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { FastifyRequest } from 'fastify';
import { may } from '../../../../libs/contracts';
import { findSession, type PersonRow, type Ports, type SessionRules } from '../../../../libs/usecases';
import { ProblemError } from '../http/problem-error';
import { PORTS, SESSION_RULES } from '../tokens';
import { PERMISSION_KEY, type RoutePermission } from './permit';
import { readSessionCookie } from './session-cookie';

export type SignedInRequest = FastifyRequest & { person?: PersonRow };

/** Lets a request through when the person it comes from has the permission the route names. */
@Injectable()
export class SessionGuard implements CanActivate {
  constructor(
    @Inject(Reflector) private readonly reflector: Reflector,
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(SESSION_RULES) private readonly rules: SessionRules,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const permission = this.reflector.get<RoutePermission | undefined>(PERMISSION_KEY, context.getHandler());
    if (permission === 'open') return true;
    const request = context.switchToHttp().getRequest<SignedInRequest>();
    const token = readSessionCookie(request);
    const person = token && (await findSession({ ...this.ports, rules: this.rules }, token));
    if (!person) throw new ProblemError(401, 'not-signed-in', 'Sign in first.');
    request.person = person;
    if (permission === 'own-sign-in') return true;
    if (person.secondFactor === 'missing')
      throw new ProblemError(403, 'second-factor-needed', 'Add a second factor first, under My sign-in.');
    if (permission === 'signed-in') return true;
    if (permission === undefined || !may(person.role, permission)) {
      throw new ProblemError(403, 'not-allowed', `A ${person.role} may not do this.`);
    }
    return true;
  }
}
