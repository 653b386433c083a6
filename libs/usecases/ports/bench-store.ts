import type { BenchTicket } from '../../contracts';

/** A bench as its list needs it. */
export interface BenchDayRow {
  readonly id: number;
  readonly code: string;
  readonly name: string;
  readonly location: string;
  readonly dayMinutes: number;
  readonly version: number;
}

/** The ordered lists of the benches. A ticket's row names its bench and its rank, so it is on one list at most. */
export interface BenchStore {
  /** Of one location, by code. */
  at(locationId: number): Promise<readonly BenchDayRow[]>;
  /** Open tickets of the location, each list in its order; those on no bench by the day promised. */
  tickets(locationId: number): Promise<readonly BenchTicket[]>;
  /** Of one bench, in its order. */
  ticketsOn(benchId: number): Promise<readonly BenchTicket[]>;
  /**
   * Holds the lists until the transaction ends, in order of id, so that two people who move tickets between the same
   * benches follow each other and never wait for each other.
   */
  lock(benchIds: readonly number[]): Promise<void>;
  /** On which bench the ticket is, its row held until the transaction ends; null when it is closed or not there. */
  placeOf(ticketId: number): Promise<{ readonly benchId: number | null } | null>;
  /**
   * Puts the ticket on the list before another one, or at its end; null takes it off. The lists must be held. False
   * when the one it was to stand before is not on that list any more; nothing is changed then.
   */
  put(ticketId: number, benchId: number | null, before: number | null): Promise<boolean>;
  /** False when the version has moved on. */
  setDay(benchId: number, version: number, minutes: number): Promise<boolean>;
  /** The bench a person works at. */
  ofPerson(personId: number): Promise<number | null>;
  setOfPerson(personId: number, benchId: number | null): Promise<void>;
}
