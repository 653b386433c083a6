export type LiveKind =
  'ticket' | 'unit' | 'flag' | 'bulletin' | 'recheck' | 'callback' | 'shop-data' | 'shelf' | 'sheet';

/** Hints for pages that are open: told at commit, lost when nobody listens. */
export interface LiveStore {
  tell(kind: LiveKind, id: number | null): Promise<void>;
}
