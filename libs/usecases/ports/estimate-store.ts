import type { EstimateRevision } from '../../contracts';

/** A ticket that was handed over, with the newest revision of its estimate. */
export interface BookedEstimate extends EstimateRevision {
  readonly ticket: string;
  readonly owner: string;
  readonly location: string;
  /** The civil day at the shop. */
  readonly handedOverOn: string;
  readonly authorisedMinor: number | null;
  readonly authorisedRevision: number | null;
}

/** Estimates: revisions are only ever added. */
export interface EstimateStore {
  /** Of one ticket, the newest first. */
  ofTicket(ticketId: number): Promise<readonly EstimateRevision[]>;
  /** Throws when the ticket has that revision already: who writes one holds the ticket's version. */
  add(ticketId: number, estimate: Omit<EstimateRevision, 'at' | 'by'>, personId: number): Promise<void>;
  /** Tickets of the location (null: every one) handed over from the first day to before the second, oldest first. */
  handedOver(from: string, to: string, locationId: number | null): Promise<readonly BookedEstimate[]>;
}
