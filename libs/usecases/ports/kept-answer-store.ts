/** A request that can be asked again; instants are epoch milliseconds. */
export interface RepeatableRequest {
  readonly personId: number;
  readonly key: string;
  readonly fingerprint: string;
}

/** How a request stands: not seen before, being worked on, answered, or another one under the same key. */
export type KeptAnswer =
  | { readonly state: 'new' }
  | { readonly state: 'running' }
  | { readonly state: 'other' }
  | { readonly state: 'answered'; readonly status: number; readonly body: unknown };

export interface KeptAnswerStore {
  /** Claims the key, or says how it stands. What was begun before `forgottenBefore` is no longer known. */
  begin(request: RepeatableRequest, at: number, forgottenBefore: number): Promise<KeptAnswer>;
  keep(request: RepeatableRequest, status: number, body: unknown): Promise<void>;
  /** Gives the key free again: nothing was done under it. */
  forget(request: RepeatableRequest): Promise<void>;
}
