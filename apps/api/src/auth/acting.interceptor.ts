import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import type { Observable } from 'rxjs';
import { actingAs } from '../../../../libs/store';
import { sightOf } from '../../../../libs/usecases';
import type { SignedInRequest } from './session.guard';

/** Lets the store know in whose name a request is answered: the trail names that person and a program's token, and the wall lets no more be seen. */
@Injectable()
export class ActingInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    const { person, token } = context.switchToHttp().getRequest<SignedInRequest>();
    if (!person) return next.handle();
    const sight = sightOf({ role: person.role, locationId: person.location.id }) ?? 'all';
    const by = token ? { tokenId: token.id } : {};
    return actingAs({ personId: person.id, sight, ...by }, () => next.handle());
  }
}
