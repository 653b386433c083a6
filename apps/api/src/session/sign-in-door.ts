import { Inject, Injectable } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Me } from '../../../../libs/contracts';
import {
  DEVICE_MS,
  forgiveTries,
  knowDevice,
  waitBeforeTry,
  type CodeAsked,
  type Ports,
  type SignedIn,
  type Try,
} from '../../../../libs/usecases';
import type { SecurityLog } from '../auth/security-log';
import { clearCookie, readCookie, setCookie } from '../auth/session-cookie';
import { ProblemError } from '../http/problem-error';
import { PORTS, SECURITY_LOG } from '../tokens';

type Wrong = 'wrong-password' | 'wrong-code' | 'wrong-elsewhere';

/** What every way of signing in has in common over HTTP: being held up, cookies, and a line in the log. */
@Injectable()
export class SignInDoor {
  constructor(
    @Inject(PORTS) private readonly ports: Ports,
    @Inject(SECURITY_LOG) private readonly log: SecurityLog,
  ) {}

  /** Counts a try, or refuses it with 429 and how long to wait. */
  async tryOf(request: FastifyRequest, what: Try['what'], account: string | number): Promise<Try> {
    const tried = { what, account: String(account), address: request.ip, device: readCookie(request, 'device') };
    const wait = await waitBeforeTry(this.ports, tried);
    if (wait === 0) return tried;
    this.log.note({ act: 'held-up', how: what, address: request.ip });
    throw tooManyTries(wait);
  }

  right(tried: Try): Promise<void> {
    return forgiveTries(this.ports, tried);
  }

  /** Answers 401, which a page takes for "not let in yet". */
  refuse(request: FastifyRequest, act: Wrong, detail: string, personId?: number): never {
    this.log.note({ act, personId, address: request.ip });
    throw new ProblemError(401, act, detail);
  }

  /** Sets the session's cookie and knows the browser from now on; or asks for the code. */
  async open(
    request: FastifyRequest,
    reply: FastifyReply,
    entered: SignedIn | CodeAsked,
    how: 'password' | 'link' | 'code' | 'elsewhere',
  ): Promise<Me> {
    if (entered.step === 'code') {
      this.log.note({ act: 'code-asked', how, address: request.ip });
      setCookie(request, reply, { of: 'step', token: entered.token });
      throw new ProblemError(401, 'code-needed', 'Now the code of your second factor.');
    }
    const { id: personId } = entered.me;
    const device = await knowDevice(this.ports, personId, readCookie(request, 'device'));
    setCookie(request, reply, { of: 'session', token: entered.token });
    setCookie(request, reply, { of: 'device', token: device, forMs: DEVICE_MS });
    if (how === 'code') clearCookie(request, reply, 'step');
    this.log.note({ act: 'signed-in', how, personId, address: request.ip });
    return entered.me;
  }
}

function tooManyTries(wait: number): ProblemError {
  const seconds = Math.ceil(wait / 1_000);
  const words = `Too many tries; wait ${seconds} seconds and try again.`;
  return new ProblemError(429, 'too-many-tries', words, {}, { 'retry-after': String(seconds) });
}
