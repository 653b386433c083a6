import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { ProblemError } from './problem-error';

/** The version a change was made on, from `If-Match: "7"`. Without it nobody could know what the person had seen. */
export function readVersion(_: unknown, context: ExecutionContext): number {
  const header = context.switchToHttp().getRequest<FastifyRequest>().headers['if-match'];
  if (header === undefined) {
    throw new ProblemError(428, 'version-missing', 'Name the version this change was made on, as If-Match: "7".');
  }
  const version = /^"(\d{1,9})"$/.exec(header)?.[1];
  if (version === undefined) {
    throw new ProblemError(400, 'bad-input', `If-Match is ${header}; accepted is a version in quotes, such as "7".`);
  }
  return Number(version);
}

export const IfMatch = createParamDecorator(readVersion);
