import type { FitRuleFile, RulebookFile } from '../../fit-rules';

/** Which rulebook stands, and what time the database has. */
export interface RevisionMark {
  /** 0 before anything was published. */
  readonly revision: number;
  /** Tells this revision of this database from every other one. */
  readonly stamp: string;
  /** The database's clock in epoch milliseconds: a worker's own clock may be wrong. */
  readonly now: number;
}

export type RevisionCause = 'publish' | 'withdraw' | 'correct' | 'in-force' | 'standing' | 'seed' | 'import';

export interface NewRevision {
  readonly cause: RevisionCause;
  readonly sourceId: number | null;
  readonly personId: number | null;
}

/** One version of a rule with the revisions that opened and closed it. */
export interface StoredRule {
  readonly rule: FitRuleFile;
  readonly sourceId: number;
  readonly openedBy: number;
  readonly closedBy: number | null;
}

export interface RulebookStore {
  latest(): Promise<RevisionMark>;
  /** Holds the rulebook as it is until the transaction ends: many may share it, nobody can publish meanwhile. */
  share(): Promise<RevisionMark>;
  /** Waits until nobody shares the rulebook and keeps everyone out until the transaction ends. */
  alone(): Promise<RevisionMark>;
  addRevision(revision: NewRevision): Promise<{ readonly revision: number; readonly at: number }>;
  /** Every version of every rule of published and withdrawn sources, supersessions and standing. */
  load(): Promise<RulebookFile>;
  /**
   * The same, but of the rules only the versions that were opened or closed after a revision; null when that is not a
   * revision of this rulebook.
   */
  loadSince(mark: Pick<RevisionMark, 'revision' | 'stamp'>): Promise<RulebookFile | null>;
  /** Every version of the rules with these keys, oldest first. */
  versionsOf(keys: readonly string[]): Promise<readonly StoredRule[]>;
  /** The versions a source brought, and those a revision closed. */
  versionsOfSource(sourceId: number): Promise<readonly StoredRule[]>;
  versionsClosedBy(revision: number): Promise<readonly StoredRule[]>;
  /** Inserts versions, each under the source its file names and known from the instant its file says. */
  open(rules: readonly FitRuleFile[], revision: number): Promise<void>;
  /** Closes the known span of the version of each key that is known now, at the instant `at` (epoch milliseconds). */
  close(keys: readonly string[], at: number, revision: number): Promise<void>;
  /** The revision that published the source; null when it was never published. */
  revisionThatPublished(sourceId: number): Promise<number | null>;
}
