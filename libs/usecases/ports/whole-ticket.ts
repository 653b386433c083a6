import type { EstimateRevision, PartWaitView, PhotoView, UnitNoteView } from '../../contracts';
import type { ShopMark } from './catalogue-store';
import type {
  BeforeRow,
  EarlierTicketRow,
  EventRow,
  FlagRow,
  PickRow,
  PlaceRecordRow,
  SpareRow,
  TicketRow,
} from './ticket-store';
import type { EvidenceRow, TouchedRow, UnitRow } from './unit-store';

/** A ticket and what its gates rest on, as it stood at one instant. */
export interface WholeTicketRows {
  readonly ticket: TicketRow;
  readonly unit: UnitRow;
  readonly evidence: readonly EvidenceRow[];
  readonly records: readonly PlaceRecordRow[];
  readonly picks: readonly PickRow[];
  /** Worst first. */
  readonly flags: readonly FlagRow[];
  /** By their keys those that a ticket rests on, where they are settled: currency, money, whether a shelf is kept. */
  readonly settings: Readonly<Record<string, unknown>>;
}

/** What the page of a ticket shows, as it stood at one instant, and what marks the papers of that instant. */
export interface TicketPageRows extends WholeTicketRows {
  readonly mark: ShopMark;
  readonly before: readonly BeforeRow[];
  readonly events: readonly EventRow[];
  readonly notes: readonly UnitNoteView[];
  readonly earlier: readonly EarlierTicketRow[];
  readonly revisions: readonly EstimateRevision[];
  readonly photos: readonly PhotoView[];
  readonly waits: readonly PartWaitView[];
  readonly spares: readonly SpareRow[];
  readonly touched: readonly TouchedRow[];
}

/** Tickets read whole. */
export interface WholeTicketStore {
  /** The ticket with what its gates rest on, in one question; null when there is none. */
  whole(id: number): Promise<WholeTicketRows | null>;
  /** The same with all that its page shows, of the places worked on the newest. */
  page(id: number, most: { readonly touched: number }): Promise<TicketPageRows | null>;
}
