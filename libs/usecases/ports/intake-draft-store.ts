import type { IntakeDraft } from '../../contracts';

/** What each person has begun to type at the intake; instants are epoch milliseconds. */
export interface IntakeDraftStore {
  /** Null where there is none, or none since the instant. */
  of(personId: number, since: number): Promise<IntakeDraft | null>;
  /** Takes the place of the person's last one. */
  keep(personId: number, draft: IntakeDraft, at: number): Promise<void>;
  forget(personId: number): Promise<void>;
  /** Forgets everybody's that was last typed at before the instant. */
  forgetBefore(instant: number): Promise<void>;
}
