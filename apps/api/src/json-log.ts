import { pino, type DestinationStream, type Logger, type LoggerOptions } from 'pino';
import type { Config } from '../../../libs/config';

/** A log of its own name: one JSON object a line, whatever it holds, on standard error or where it is told to go. */
export function jsonLog(
  { logLevel }: Pick<Config, 'logLevel'>,
  {
    name,
    mixin,
    to,
  }: {
    readonly name: string;
    readonly mixin?: NonNullable<LoggerOptions['mixin']>;
    readonly to?: DestinationStream | undefined;
  },
): Logger {
  return pino(
    { level: logLevel, name, timestamp: pino.stdTimeFunctions.isoTime, ...(mixin ? { mixin } : {}) },
    to ?? pino.destination({ dest: 2, sync: true }),
  );
}
