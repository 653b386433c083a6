/** What has to be remembered while somebody is at the provider; nobody else may learn it. */
export interface AtTheProvider {
  readonly state: string;
  readonly nonce: string;
  readonly verifier: string;
}

/** Who the provider says it is. Issuer and subject name an account for ever, an e-mail address only for now. */
export interface FoundElsewhere {
  readonly issuer: string;
  readonly subject: string;
  /** In small letters; null when the provider has not verified one. */
  readonly email: string | null;
  readonly name: string | null;
}

/** Another provider with which people can sign in. */
export interface Elsewhere {
  /** What the page calls it. */
  readonly name: string;
  /** Where to send the browser, which is to come back to `backTo`. */
  begin(backTo: string): Promise<{ readonly address: string; readonly remember: AtTheProvider }>;
  /** What the browser came back with, under `backTo` with its query; null when it proves nothing. */
  finish(cameBack: string, remembered: AtTheProvider): Promise<FoundElsewhere | null>;
}

export interface OutsideIdentityStore {
  /** The person bound to that account. */
  personOf(issuer: string, subject: string): Promise<number | null>;
  /** Binds the account to the person with that e-mail address who is bound to none yet; null when there is no such. */
  bind(found: { issuer: string; subject: string; email: string }): Promise<number | null>;
  /** Writes down the address, in place of another and of what was bound; false when somebody else has it. */
  put(personId: number, email: string): Promise<boolean>;
  remove(personId: number): Promise<void>;
}
