import { createHash } from 'node:crypto';
import {
  Inject,
  Injectable,
  SetMetadata,
  type CallHandler,
  type ExecutionContext,
  type NestInterceptor,
} from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { FastifyReply } from 'fastify';
import { catchError, concatMap, from, of, type Observable } from 'rxjs';
import type { Problem } from '../../../../libs/contracts';
import type { KeptAnswer, Ports, RepeatableRequest } from '../../../../libs/usecases';
import type { SignedInRequest } from '../auth/session.guard';
import { PORTS } from '../tokens';
import { ProblemError } from './problem-error';
import { problemOf } from './problem.filter';

const REPEATABLE = 'repeatable';
const A_DAY = 24 * 3_600_000;

/** The changes of this controller may come with an Idempotency-Key, and are then done once however often they come. */
export const Repeatable = () => SetMetadata(REPEATABLE, true);

export const isRepeatable = (controller: object): boolean => Reflect.getMetadata(REPEATABLE, controller) === true;

/**
 * A change that comes with a key is answered once and the answer kept for a day: the same key brings the same answer,
 * refusals too; another request under it is refused with 422, and one that comes while the first is worked on with
 * 409. What failed here (5xx) is not kept. After a crash in mid-work, or when what was done cannot be noted, the key stays
 * taken; the version that every such change names keeps it from being done twice under a new key.
 */
@Injectable()
export class RepeatInterceptor implements NestInterceptor {
  constructor(
    @Inject(Reflector) private readonly reflector: Reflector,
    @Inject(PORTS) private readonly ports: Ports,
  ) {}

  async intercept(context: ExecutionContext, next: CallHandler<unknown>): Promise<Observable<unknown>> {
    const request = context.switchToHttp().getRequest<SignedInRequest>();
    const key = request.headers['idempotency-key'];
    if (key === undefined || request.method === 'GET' || !request.person) return next.handle();
    if (!this.reflector.get<boolean | undefined>(REPEATABLE, context.getClass())) return next.handle();
    const asked = {
      personId: request.person.id,
      key: ownKey(request, readKey(key)),
      fingerprint: fingerprintOf(request),
    };
    const now = this.ports.clock.now();
    const kept = await this.ports.store.keptAnswers.begin(asked, now, now - A_DAY);
    const reply = context.switchToHttp().getResponse<FastifyReply>();
    return kept.state === 'new' ? this.keeping(asked, next, reply) : of(answerAgain(kept, reply));
  }

  private keeping(asked: RepeatableRequest, next: CallHandler<unknown>, reply: FastifyReply): Observable<unknown> {
    const { keptAnswers } = this.ports.store;
    return next.handle().pipe(
      // What failed is let go of before an answer is kept: what is done must not be done again for want of a note of it.
      catchError(async (error: unknown) => {
        const { status, type, message, more } = problemOf(error);
        if (status >= 500) await keptAnswers.forget(asked);
        else await keptAnswers.keep(asked, status, { type, detail: message, ...more });
        throw error;
      }),
      concatMap((body) =>
        from(
          keptAnswers.keep(asked, reply.statusCode, body).then(
            () => body,
            () => body,
          ),
        ),
      ),
    );
  }
}

/** Programs choose their keys without knowing of each other, so each token has keys of its own. */
function ownKey({ token }: SignedInRequest, key: string): string {
  return token ? `token ${token.id} ${key}` : key;
}

function readKey(key: string | string[]): string {
  if (typeof key === 'string' && /^[\x21-\x7e]{1,255}$/.test(key)) return key;
  throw new ProblemError(400, 'bad-input', 'Idempotency-Key must be 1 to 255 visible characters.');
}

function fingerprintOf({ method, url, headers, body }: SignedInRequest): string {
  const what = JSON.stringify([method, url, headers['if-match'] ?? null, body ?? null]);
  return createHash('sha256').update(what).digest('hex');
}

function answerAgain(kept: Exclude<KeptAnswer, { state: 'new' }>, reply: FastifyReply): unknown {
  if (kept.state === 'other')
    throw new ProblemError(422, 'key-reused', 'This Idempotency-Key was used for another request; take a new one.');
  if (kept.state === 'running')
    throw new ProblemError(409, 'still-running', 'The same request is being worked on; ask again in a moment.');
  const { status, body } = kept;
  if (status >= 400) {
    const { type, detail, ...more } = body as Problem;
    throw new ProblemError(status, type, detail, more);
  }
  void reply.status(status).header('cache-control', 'no-store').header('idempotent-replayed', 'true');
  const version = (body as { version?: unknown } | null)?.version;
  if (typeof version === 'number') void reply.header('etag', `"${version}"`);
  return body;
}
