/** Locks up what must be read again and yet not lie open in the database. */
export interface Seals {
  /** The text, sealed; `about` says what it belongs to and must be named again to open it. */
  seal(text: string, about: string): string;
  /** Null when it was sealed with another key or about something else, or was changed since. */
  open(sealed: string, about: string): string | null;
  /** The same under the key of today; null when it is sealed with that already, or cannot be opened at all. */
  renew(sealed: string, about: string): string | null;
}
