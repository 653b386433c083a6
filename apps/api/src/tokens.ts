import type { Config } from '../../../libs/config';
import type { Clock, Passwords, Ports, SessionRules, Store } from '../../../libs/usecases';

/** Under which names the modules are handed what lies outside the API. */
export const PORTS = Symbol('ports');
export const CONFIG = Symbol('config');
export const PRINTING = Symbol('printing');
export const PICTURES = Symbol('pictures');
export const PASSWORDS = Symbol('passwords');
export const ELSEWHERE = Symbol('elsewhere');
export const SEALS = Symbol('seals');
export const COURIER = Symbol('courier');
export const MAIL = Symbol('mail');
export const SECURITY_LOG = Symbol('security log');
export const SESSION_RULES = Symbol('session rules');

/** What the API is started with. */
export interface ApiOptions {
  readonly config: Config;
  readonly store: Store;
  /** The shop's clock; the machine's in the configured time zone when left out. */
  readonly clock?: Clock;
  readonly passwords?: Passwords;
  readonly sessionRules?: SessionRules;
  /** Where the security log goes, one line at a time; standard error when left out. */
  readonly securityLog?: { write(line: string): void };
  /** Folder of the built page; `dist/apps/web` when left out. */
  readonly pageFolder?: string;
}

export type { Ports };
