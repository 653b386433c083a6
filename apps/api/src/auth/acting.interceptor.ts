import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import type { Observable } from 'rxjs';
import { actingAs } from '../../../../libs/store';
import type { SignedInRequest } from './session.guard';

/** Lets the store know in whose name a request changes things, so that the trail names that person. */
@Injectable()
export class ActingInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    const { person } = context.switchToHttp().getRequest<SignedInRequest>();
    return person
      ? actingAs({ personId: person.id, locationId: person.location.id }, () => next.handle())
      : next.handle();
  }
}
