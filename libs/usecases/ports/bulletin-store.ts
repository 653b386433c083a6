import type { BulletinDraft, BulletinRow } from '../../contracts';
import type { SourceFile } from '../../fit-rules';

export type SourceState = 'draft' | 'published' | 'withdrawn';

/** A source with its state, as it stands in the store. */
export interface BulletinRecord extends BulletinRow {
  readonly summary: string;
  readonly received: string;
  readonly withdrawnAt: string | null;
  readonly withdrawnWhy: string | null;
  readonly draft: BulletinDraft | null;
}

export interface BulletinFields extends Omit<SourceFile, 'key'> {
  readonly summary: string;
  readonly draft: BulletinDraft;
}

export interface BulletinStore {
  /** Newest first. */
  list(): Promise<readonly BulletinRow[]>;
  find(id: number): Promise<BulletinRecord | null>;
  /** The same, locked until the transaction ends. */
  lock(id: number): Promise<BulletinRecord | null>;
  /** The new source's id; null when the key is taken. */
  insert(key: string, fields: BulletinFields): Promise<number | null>;
  /** The same for many at once: the ids of those whose keys were free, by key. */
  insertMany(drafts: readonly (BulletinFields & { readonly key: string })[]): Promise<ReadonlyMap<string, number>>;
  /** The draft's new text; its version goes up by one. */
  update(id: number, fields: BulletinFields): Promise<void>;
  markPublished(id: number, at: number): Promise<void>;
  markWithdrawn(id: number, at: number, why: string): Promise<void>;
  /** Which of these product lines and positions (as `line/position`) exist. */
  knownPlaces(): Promise<ReadonlyMap<string, ReadonlySet<string>>>;
}
