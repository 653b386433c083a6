import type { LogLevel } from '@nestjs/common';
import type { Config } from '../../../libs/config';

const FROM_WORST: readonly LogLevel[] = ['fatal', 'error', 'warn', 'log', 'debug', 'verbose'];
// The framework's ordinary level tells of every route at every start, so it comes with 'debug' only.
const SHOWN: Readonly<Record<Config['logLevel'], number>> = {
  silent: 0,
  fatal: 1,
  error: 2,
  warn: 3,
  info: 3,
  debug: 5,
  trace: 6,
};

/** The framework's levels for a level of the configuration; none for `silent`. */
export function levelsFor(level: Config['logLevel']): LogLevel[] {
  return FROM_WORST.slice(0, SHOWN[level]);
}
