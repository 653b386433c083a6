import { Injectable, type CallHandler, type ExecutionContext } from '@nestjs/common';
import { ZodSerializerInterceptor } from 'nestjs-zod';
import { concatMap, of, tap, type Observable } from 'rxjs';

/**
 * Holds every answer against its contract before it leaves. One that is kept and cannot change any more, as its use case
 * says by freezing it, was held against it when it first left.
 */
@Injectable()
export class AnswerShapeInterceptor extends ZodSerializerInterceptor {
  private readonly held = new WeakMap<object, unknown>();

  override intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    return next.handle().pipe(
      concatMap((body) => {
        if (typeof body !== 'object' || body === null || !Object.isFrozen(body)) return this.shaped(context, body);
        if (this.held.has(body)) return of(this.held.get(body));
        return this.shaped(context, body).pipe(tap((shaped) => this.held.set(body, shaped)));
      }),
    );
  }

  private shaped(context: ExecutionContext, body: unknown): Observable<unknown> {
    return super.intercept(context, { handle: () => of(body) });
  }
}
