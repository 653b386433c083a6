import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import type { FastifyReply } from 'fastify';
import { tap, type Observable } from 'rxjs';

/**
 * Puts the version of what is answered in the ETag, so that the next change can name it in If-Match. What is answered
 * is for the person who asked, and kept nowhere on the way.
 */
@Injectable()
export class VersionTagInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    const reply = context.switchToHttp().getResponse<FastifyReply>();
    void reply.header('cache-control', 'no-store');
    return next.handle().pipe(
      tap((body) => {
        const version = (body as { version?: unknown } | null)?.version;
        if (typeof version === 'number') void reply.header('etag', `"${version}"`);
      }),
    );
  }
}
