/** When things happened on a ticket, as instants in order. */
export interface Times {
  readonly opened: number;
  readonly found: number;
  readonly picked: number;
  readonly left: number;
  readonly closed: number | null;
}
