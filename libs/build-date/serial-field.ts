import { z } from 'zod';

/** Letters left when the ones taken for digits (I, O, Q) are skipped: the usual choice for year letters. */
const letters = z.string().regex(/^[A-Z0-9]+$/, 'letters must be capitals or digits, in order, such as ABCDEFGHJKLM');
const length = z.int().min(1).max(12);

/**
 * One field of a serial, left to right. Fields have fixed widths, so each stands at a fixed place or at a fixed
 * place after a separator; only a sequence may vary in length, and only before a separator or at the end.
 */
export const SerialFieldSchema = z.discriminatedUnion('kind', [
  /** Last digit of the year; every decade of the scheme's valid span stays possible. */
  z.object({ kind: z.literal('year-digit') }),
  z.object({ kind: z.literal('year-two-digits') }),
  z.object({ kind: z.literal('year-four-digits') }),
  /** One letter a year from `firstYear` on, in the order given, starting over after the last. */
  z.object({ kind: z.literal('year-letter'), letters, firstYear: z.int().min(1950).max(2099) }),
  /** Two digits, 01 to 12. */
  z.object({ kind: z.literal('month-number') }),
  /** One letter a month, twelve in order; skipped letters are simply not in the list. */
  z.object({ kind: z.literal('month-letter'), letters: letters.length(12) }),
  /** Two digits, ISO 8601 week; the year field is then the week year. */
  z.object({ kind: z.literal('iso-week') }),
  /** Three digits, 001 to 366. */
  z.object({ kind: z.literal('day-of-year') }),
  /** Two digits, 01 to 31; needs a month field. */
  z.object({ kind: z.literal('day-of-month') }),
  /** Letters or digits for the works; `codes` limits what is accepted when it is not empty. */
  z.object({
    kind: z.literal('plant'),
    length,
    codes: z.array(z.object({ code: z.string(), name: z.string() })).default([]),
  }),
  /** Running number, digits: exactly `length`, or up to `maxLength`. */
  z.object({ kind: z.literal('sequence'), length, maxLength: length.optional() }),
  /** Characters that are always the same. */
  z.object({ kind: z.literal('literal'), text: z.string().regex(/^[A-Z0-9]{1,12}$/) }),
  /** A dash, blank, slash or dot, as the maker prints it. */
  z.object({ kind: z.literal('separator') }),
  /** Characters that say nothing about the date (model code, check character). */
  z.object({ kind: z.literal('other'), length }),
]);
export type SerialField = z.infer<typeof SerialFieldSchema>;
