/** A second factor as it is kept. */
export interface SecondFactorRow {
  readonly sealed: string;
  /** False until a first code has shown that the app has the secret. */
  readonly on: boolean;
}

export interface SecondFactorStore {
  find(personId: number): Promise<SecondFactorRow | null>;
  /** Every secret as it is sealed, by person. */
  sealed(): Promise<readonly { readonly personId: number; readonly sealed: string }[]>;
  /** Keeps a secret under another seal; false when it is no longer the one that was read. */
  reseal(personId: number, was: string, sealed: string): Promise<boolean>;
  /** Keeps a secret that is yet to be shown to work, in place of another such; false when one is on already. */
  begin(personId: number, sealed: string): Promise<boolean>;
  /** Turns on what was begun, with the step of its first code. */
  turnOn(personId: number, step: number, at: number): Promise<void>;
  /** Takes the code of a time step; false when it or a later one was taken before. */
  takeStep(personId: number, step: number): Promise<boolean>;
  /** Takes the second factor away, recovery codes too; false when there was none. */
  remove(personId: number): Promise<boolean>;
  /** Keeps these recovery codes in place of all others. */
  setRecovery(personId: number, hashes: readonly string[]): Promise<void>;
  /** Takes a recovery code, once; false when the person has none with that hash. */
  takeRecovery(personId: number, hash: string): Promise<boolean>;
  recoveryLeft(personId: number): Promise<number>;
}

export interface SignInStepStore {
  insert(step: { tokenHash: string; personId: number; expiresAt: number }): Promise<void>;
  /** Whose first step this was; null when it is unknown or its time is over. */
  find(tokenHash: string, now: number): Promise<number | null>;
  remove(tokenHash: string): Promise<void>;
  removeExpired(before: number): Promise<void>;
}
