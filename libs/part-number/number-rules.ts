import { z } from 'zod';

/** How a maker writes "this bag holds n": `before` and `after` stand round the count, as in `-10PK` or `/P10`. */
export const packMarkSchema = z.strictObject({
  before: z.string().max(8),
  after: z.string().max(8),
});

/** How one maker writes part numbers. Data, never a pattern language: a shop can enter it without being a programmer. */
export const numberRulesSchema = z.strictObject({
  /** Short code of the maker; the first half of every {@link PartKey}. */
  makerCode: z.string().regex(/^[A-Z0-9]{1,12}$/, 'a maker code is 1 to 12 capital letters or digits'),
  /** Characters that do not matter, such as `-` and `.`; blanks never matter. */
  noise: z.string().max(16),
  /** Ways to write a pack; the longest that fits is taken. */
  packMarks: z.array(packMarkSchema).max(16),
  /** True when a last letter after a digit is the revision of the part. It stays in the canonical form. */
  trailingLetterIsRevision: z.boolean(),
});

export type PackMark = z.infer<typeof packMarkSchema>;
export type NumberRules = z.infer<typeof numberRulesSchema>;

/** `${makerCode}/${canonical number}`: one part, whatever bag it comes in. */
export type PartKey = string;

/** Puts the two halves of a part key together. */
export function partKeyOf(makerCode: string, canonical: string): PartKey {
  return `${makerCode}/${canonical}`;
}

/** Takes a part key apart; the maker's code never holds a slash. */
export function splitPartKey(key: PartKey): { makerCode: string; canonical: string } {
  const slash = key.indexOf('/');
  return { makerCode: key.slice(0, slash), canonical: key.slice(slash + 1) };
}

/** True for text that has the form of a part key. */
export function isPartKey(text: string): boolean {
  return /^[A-Z0-9]{1,12}\/[^\s]{1,40}$/.test(text);
}
