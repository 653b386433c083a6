import type { FastifyInstance } from 'fastify';
import { ProblemError } from './problem-error';

/** Far deeper than any body of ours; some thousands of levels down, writing it out would end for want of stack. */
const MOST_LEVELS = 100;

/** Refuses a body that is deeper than any of ours before anything walks through it by calling itself. */
export function refuseDeepBodies(fastify: FastifyInstance): void {
  const words = `What was sent has lists or objects more than ${MOST_LEVELS} levels deep; none of ours has a tenth of that.`;
  fastify.addHook('preValidation', (request, _reply, next) => {
    next(isDeeperThan(MOST_LEVELS, request.body) ? new ProblemError(400, 'bad-input', words) : undefined);
  });
}

/** Whether lists and objects lie deeper in one another than so many levels. It walks level by level, so none is too deep. */
export function isDeeperThan(levels: number, value: unknown): boolean {
  let level = holders([value]);
  for (let depth = 0; depth < levels; depth++) {
    if (level.length === 0) return false;
    level = holders(level.flatMap((one): unknown[] => Object.values(one)));
  }
  return level.length > 0;
}

const holders = (values: readonly unknown[]): object[] =>
  values.filter((value) => typeof value === 'object' && value !== null);
