import type { LogLevel } from '@nestjs/common';
import type { Config } from '../../../libs/config';

const FROM_WORST: readonly LogLevel[] = ['fatal', 'error', 'warn', 'log', 'debug', 'verbose'];
const STEPS: readonly Config['logLevel'][] = ['fatal', 'error', 'warn', 'info', 'debug', 'trace'];

/** The framework's levels for a level of the configuration; none for `silent`. */
export function levelsFor(level: Config['logLevel']): LogLevel[] {
  return FROM_WORST.slice(0, STEPS.indexOf(level) + 1);
}
