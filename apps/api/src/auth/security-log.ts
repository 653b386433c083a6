import type { DestinationStream } from 'pino';
import type { Config } from '../../../../libs/config';
import { currentRequestId } from '../http/request-id';
import { jsonLog } from '../json-log';

/** Something that matters to who watches over the shop. Nothing a person typed stands in it but an address. */
export interface SecurityEvent {
  readonly act:
    | 'signed-in'
    | 'code-asked'
    | 'wrong-password'
    | 'wrong-code'
    | 'wrong-elsewhere'
    | 'wrong-token'
    | 'token-used'
    | 'held-up'
    | 'signed-out'
    | 'refused';
  readonly address: string;
  readonly personId?: number | undefined;
  /** The token of the program that asked in that person's name. */
  readonly tokenId?: number | undefined;
  /** By password, one-time link, code or another sign-in; of a refused request its method, path and why. */
  readonly how?: string;
}

export interface SecurityLog {
  note(event: SecurityEvent): void;
}

/** One JSON object a line, whatever it holds, on standard error. */
export function securityLog(config: Pick<Config, 'logLevel'>, to?: DestinationStream): SecurityLog {
  const log = jsonLog(config, { name: 'security', mixin: () => ({ requestId: currentRequestId() }), to });
  return {
    note: (event) => (USUAL.has(event.act) ? log.info(event) : log.warn(event)),
  };
}

const USUAL: ReadonlySet<SecurityEvent['act']> = new Set(['signed-in', 'signed-out', 'token-used']);
