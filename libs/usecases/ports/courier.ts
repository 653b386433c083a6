/** What became of a post. */
export type CourierAnswer =
  /** It was answered, with whatever status. */
  | { readonly kind: 'answered'; readonly status: number }
  /** It was not, or not sent at all; a sentence says why. */
  | { readonly kind: 'failed'; readonly why: string };

/** Posts to addresses that a person typed, and to none that lie inside the house unless the configuration names them. */
export interface Courier {
  /** Why an address will do in no case, in a sentence; null when it may. Where its name leads is looked at when it is posted to. */
  whyNot(url: string): string | null;
  post(url: string, body: string, headers: Readonly<Record<string, string>>): Promise<CourierAnswer>;
}
