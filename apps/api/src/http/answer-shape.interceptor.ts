import { Injectable, type CallHandler, type ExecutionContext } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { ZodSerializerInterceptor } from 'nestjs-zod';
import { concatMap, of, tap, type Observable } from 'rxjs';

/**
 * Holds every answer against its contract before it leaves. One that is kept and cannot change any more, as its use case
 * says by freezing it, was held against it when it first left, and leaves as the text it was then.
 */
@Injectable()
export class AnswerShapeInterceptor extends ZodSerializerInterceptor {
  private readonly held = new WeakMap<object, { readonly shaped: unknown; readonly text: string }>();

  override intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    return next.handle().pipe(
      concatMap((body) => {
        if (typeof body !== 'object' || body === null || !Object.isFrozen(body)) return this.shaped(context, body);
        const held = this.held.get(body);
        if (held) {
          const reply = context.switchToHttp().getResponse<FastifyReply>();
          void reply.type('application/json; charset=utf-8').serializer(() => held.text);
          return of(held.shaped);
        }
        return this.shaped(context, body).pipe(
          tap((shaped) => this.held.set(body, { shaped, text: JSON.stringify(shaped) })),
        );
      }),
    );
  }

  private shaped(context: ExecutionContext, body: unknown): Observable<unknown> {
    return super.intercept(context, { handle: () => of(body) });
  }
}
