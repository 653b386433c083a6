import { codesOf } from './retryable';

/**
 * An error as a log may hold it. What a database says of an error repeats what was written ("Failing row contains ..."),
 * so of such a one only its codes and where it happened are kept. Others are our own sentences, or the platform's.
 */
export function loggable(error: unknown): string {
  if (!(error instanceof Error)) return typeof error === 'string' ? error : 'something that is no error';
  const codes = codesOf(error, 0);
  const frames = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  if (codes.length === 0 && !/Prisma|DatabaseError/.test(error.name + error.constructor.name))
    return error.stack ?? error.message;
  return [`${error.name} ${[...new Set(codes)].join(' ')}`.trim(), ...frames].join('\n');
}
