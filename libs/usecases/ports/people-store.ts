import type { ChangePerson, NewPerson } from '../../contracts';
import type { PersonRow } from './session-store';

/** A person with what an administrator sees of the sign-in; instants are epoch milliseconds. */
export interface PersonRecord extends PersonRow {
  readonly version: number;
  readonly linkUntil: number | null;
  /** As whom the person signs in with another provider; `bound` once that has happened. */
  readonly elsewhere: { readonly email: string; readonly bound: boolean } | null;
}

export interface PeopleStore {
  /** Holds off every other change of people until the transaction ends, so that a count of them stays true. */
  alone(): Promise<void>;
  list(): Promise<readonly PersonRecord[]>;
  byId(id: number): Promise<PersonRecord | null>;
  locations(): Promise<readonly PersonRow['location'][]>;
  /** Makes the shop's first location and answers its id. */
  addLocation(code: string, name: string): Promise<number>;
  /** The new id; null when the sign-in name is taken. */
  insert(person: NewPerson): Promise<number | null>;
  /** False when the version is no longer the person's. */
  change(id: number, version: number, patch: ChangePerson): Promise<boolean>;
  setPassword(id: number, hash: string): Promise<void>;
  /** Keeps the hash of a link's token, in place of an earlier one. */
  invite(id: number, tokenHash: string, expiresAt: number): Promise<void>;
  /** Whose link this is; null when there is none or its time is over. */
  invitedBy(tokenHash: string, now: number): Promise<number | null>;
  /** Whose link this is, and takes it away: it works once. Null when there is none or its time is over. */
  takeInvitation(tokenHash: string, now: number): Promise<number | null>;
  /** Ends every sign-in of the person, save the one given. */
  endSessions(id: number, saveTokenHash: string | null): Promise<void>;
}
