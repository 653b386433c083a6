import type { NumberRules, PackMark } from './number-rules';

/** What a printed part number says. `pack` is how many parts the bag holds; 1 when it names no pack. */
export interface ReadPartNumber {
  readonly canonical: string;
  readonly pack: number;
  readonly revision: string | null;
}

/** Why a text is no part number, with what is needed to say so. */
export type PartNumberProblem =
  | { readonly code: 'empty' }
  | { readonly code: 'too-long'; readonly length: number; readonly most: number }
  | { readonly code: 'strange-character'; readonly character: string; readonly at: number }
  | { readonly code: 'pack-of-none'; readonly suffix: string };

export type PartNumberReading =
  { readonly ok: true; readonly number: ReadPartNumber } | { readonly ok: false; readonly problem: PartNumberProblem };

const LONGEST = 40;
const LAST_LETTER_AFTER_DIGIT = /[0-9]([A-Z])$/;

/**
 * Reads a part number as printed or typed. Letter case, blanks and the maker's noise characters do not matter; a pack
 * suffix is taken off and counted; a trailing revision letter stays in the canonical form, because another revision is
 * another part. Reading a canonical form again gives the same form.
 */
export function readPartNumber(text: string, rules: NumberRules): PartNumberReading {
  const typed = text.toUpperCase().replace(/\s+/g, '');
  if (typed.length > LONGEST) return refuse({ code: 'too-long', length: typed.length, most: LONGEST });
  const strange = firstStrange(typed, rules);
  if (strange !== null) return refuse({ code: 'strange-character', character: typed[strange]!, at: strange });
  const pack = longestPack(typed, rules);
  if (pack?.count === 0) return refuse({ code: 'pack-of-none', suffix: typed.slice(pack.at) });
  const canonical = withoutNoise(pack ? typed.slice(0, pack.at) : typed, rules.noise);
  if (canonical === '') return refuse({ code: 'empty' });
  const letter = rules.trailingLetterIsRevision ? LAST_LETTER_AFTER_DIGIT.exec(canonical) : null;
  return { ok: true, number: { canonical, pack: pack?.count ?? 1, revision: letter?.[1] ?? null } };
}

/** The problem in one sentence, naming the text and what would be accepted. */
export function sayPartNumberProblem(text: string, problem: PartNumberProblem): string {
  switch (problem.code) {
    case 'empty':
      return `"${text}" holds no part number: give its letters and digits.`;
    case 'too-long':
      return `"${text}" has ${problem.length} characters; a part number has at most ${problem.most}.`;
    case 'strange-character':
      return `"${text}" holds "${problem.character}", which this maker does not print: give letters, digits and the usual dashes.`;
    case 'pack-of-none':
      return `"${text}" ends in "${problem.suffix}", a pack of none: a pack holds 1 or more.`;
  }
}

function refuse(problem: PartNumberProblem): PartNumberReading {
  return { ok: false, problem };
}

function firstStrange(typed: string, rules: NumberRules): number | null {
  const marks = rules.packMarks
    .map((mark) => mark.before + mark.after)
    .join('')
    .toUpperCase();
  for (let i = 0; i < typed.length; i++) {
    const character = typed[i]!;
    if (!/[A-Z0-9]/.test(character) && !rules.noise.includes(character) && !marks.includes(character)) return i;
  }
  return null;
}

interface FoundPack {
  readonly at: number;
  readonly count: number;
}

/** The pack suffix that takes most of the text, so that a short mark cannot cut a longer one in half. */
function longestPack(typed: string, rules: NumberRules): FoundPack | null {
  let best: FoundPack | null = null;
  for (const mark of rules.packMarks) {
    const found = packAtEnd(typed, mark, rules.noise);
    if (found && (best === null || found.at < best.at)) best = found;
  }
  return best;
}

/** Looks from the end backwards: `after`, then the count (1 to 4 digits), then `before`; something must be left over. */
function packAtEnd(typed: string, mark: PackMark, noise: string): FoundPack | null {
  const before = mark.before.toUpperCase().replace(/\s+/g, '');
  const after = mark.after.toUpperCase().replace(/\s+/g, '');
  if (before === '' || !typed.endsWith(after)) return null;
  const end = typed.length - after.length;
  let start = end;
  while (start > 0 && end - start < 4 && /[0-9]/.test(typed[start - 1]!)) start--;
  if (start === end) return null;
  const at = start - before.length;
  if (at <= 0 || typed.slice(at, start) !== before) return null;
  return withoutNoise(typed.slice(0, at), noise) === '' ? null : { at, count: Number(typed.slice(start, end)) };
}

function withoutNoise(text: string, noise: string): string {
  return [...text].filter((character) => !noise.includes(character)).join('');
}
