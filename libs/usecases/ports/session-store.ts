import type { Reading, Role } from '../../contracts';

/** A person of the shop as sign-in and guard need them. */
export interface PersonRow {
  readonly id: number;
  readonly login: string;
  readonly name: string;
  readonly role: Role;
  readonly active: boolean;
  readonly passwordHash: string | null;
  /** `missing` where the shop requires one of the role and the person has none yet. */
  readonly secondFactor: 'on' | 'off' | 'missing';
  readonly location: { readonly id: number; readonly code: string; readonly name: string };
  /** What the person chose for reading the page; null for as the shop does. */
  readonly ownReading: Reading | null;
}

/** A sign-in. Instants are epoch milliseconds. */
export interface SessionRow {
  readonly person: PersonRow;
  readonly lastSeenAt: number;
  readonly expiresAt: number;
}

export interface SessionStore {
  /** Everybody who works here, by login. */
  people(): Promise<readonly PersonRow[]>;
  personByLogin(login: string): Promise<PersonRow | null>;
  /** Keeps the hash of the token only. */
  insert(session: { tokenHash: string; personId: number; at: number; expiresAt: number }): Promise<void>;
  find(tokenHash: string): Promise<SessionRow | null>;
  touch(tokenHash: string, at: number): Promise<void>;
  remove(tokenHash: string): Promise<void>;
  /** Removes sessions that ended before the instant. */
  removeExpired(before: number): Promise<void>;
  setReading(personId: number, reading: Reading | null): Promise<void>;
}

export interface SettingStore {
  /** The value of a setting; null when the shop has none. */
  read(key: string): Promise<unknown>;
  /** One version for several settings that are changed together; it rises with each of them. */
  versionOf(keys: readonly string[]): Promise<number>;
  /** True when they still have that version; nobody else changes a claimed setting until the transaction ends. */
  claim(keys: readonly string[], version: number): Promise<boolean>;
  /** Sets it and raises its version. */
  write(key: string, value: unknown, personId: number | null): Promise<void>;
}

/** Ratios of torque that count as required: `{ soonerBelow, laterAbove }`; see the fastener library's threshold. */
export const STRENGTH_THRESHOLD = 'strength-threshold';
/** How many months back a unit that was handed over is still judged again. */
export const LOOK_BACK_MONTHS = 'look-back-months';
/** Whether picking takes parts from a shelf that is counted. */
export const KEEP_SHELF = 'keep-shelf';
/** How much each kind of source counts; see the fit rules' standing. */
export const STANDING = 'standing';
/** True where managers and administrators need a second factor. */
export const SECOND_FACTOR_REQUIRED = 'second-factor-required';
/** The shop's one currency, by its three letters (ISO 4217). */
export const CURRENCY = 'currency';
/** `{ tax, hourMinor }`: see the contract of the money settings. */
export const MONEY = 'money';
/** The last day whose papers have been taken into account, `YYYY-MM-DD`. */
export const IN_FORCE_DAY = 'in-force-day';
