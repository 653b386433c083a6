import type { TokenScope } from '../../contracts';
import type { PersonRow } from './session-store';

/** A token of another program, with the person who made it; instants are epoch milliseconds. */
export interface ApiTokenRow {
  readonly id: number;
  readonly name: string;
  readonly prefix: string;
  readonly scopes: readonly TokenScope[];
  readonly person: PersonRow;
  readonly createdAt: number;
  readonly expiresAt: number;
  readonly lastUsedAt: number | null;
  readonly revokedAt: number | null;
}

export interface ApiTokenStore {
  /** One person's, or everybody's; newest first. */
  list(personId: number | null): Promise<readonly ApiTokenRow[]>;
  byId(id: number): Promise<ApiTokenRow | null>;
  byHash(tokenHash: string): Promise<ApiTokenRow | null>;
  /** Keeps the hash of the token only; answers the new id. */
  insert(token: {
    readonly name: string;
    readonly prefix: string;
    readonly tokenHash: string;
    readonly scopes: readonly TokenScope[];
    readonly personId: number;
    readonly at: number;
    readonly expiresAt: number;
  }): Promise<number>;
  touch(id: number, at: number): Promise<void>;
  /** False when it is revoked already. */
  revoke(id: number, at: number): Promise<boolean>;
}
