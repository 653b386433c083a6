import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Actor, PersonRow } from '../../../../libs/usecases';
import type { SignedInRequest } from './session.guard';

function personOf(context: ExecutionContext): PersonRow {
  const { person } = context.switchToHttp().getRequest<SignedInRequest>();
  if (!person) throw new Error('a route that is open to all asked who is signed in');
  return person;
}

/** The person who is signed in, as use cases want them. */
export const CurrentActor = createParamDecorator((_: unknown, context: ExecutionContext): Actor => {
  const { id, name, role, location } = personOf(context);
  return { id, name, role, locationId: location.id };
});

/** The same person with login and location. */
export const CurrentPerson = createParamDecorator((_: unknown, context: ExecutionContext) => personOf(context));
