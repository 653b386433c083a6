import type { DaySet } from '../day';
import type { SerialField } from './serial-field';

/** What a scheme read at one place of a serial: which characters, as what. Blanks and dashes are not counted. */
export interface ReadField {
  readonly kind: SerialField['kind'];
  /** Place of its first character in {@link SerialReading.characters}, from 0. */
  readonly at: number;
  readonly text: string;
  /** In words: `month 4, April`, `year ending in 7`. */
  readonly meaning: string;
}

/**
 * A serial's place in the order of its scheme: build time first, then running number, then plant. Keys of one
 * scheme compare with `<`; keys of two schemes do not compare.
 */
export interface SerialKey {
  readonly scheme: string;
  readonly key: string;
}

/** One of the keys a serial may have, with the build days that go with it. */
export interface PossibleKey extends SerialKey {
  readonly days: DaySet;
}

/** A serial as one scheme reads it. */
export interface SerialReading {
  readonly scheme: string;
  readonly schemeName: string;
  /** The serial in capitals as the scheme saw it. */
  readonly characters: string;
  readonly fields: readonly ReadField[];
  readonly days: DaySet;
  /** One key, or one for each year when the year field fits several. */
  readonly keys: readonly PossibleKey[];
}

/** What all schemes of the maker make of a serial. */
export interface SerialReport {
  readonly serial: string;
  readonly fit: 'none' | 'one' | 'several';
  readonly readings: readonly SerialReading[];
  /** Schemes whose form fits but which name a day that never was, or lies outside their time. */
  readonly rejected: readonly { scheme: string; schemeName: string; why: string }[];
  readonly sentence: string;
}
