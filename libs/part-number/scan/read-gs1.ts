import { hasRightCheckDigit } from './check-digit';

/** What parts a field of no fixed length from the next one: FNC1, as scanners send it (ASCII 29). */
export const FNC1 = '\u001d';

/**
 * Fields a bag can carry, by their application identifiers: how long each is, and whether that is fixed. From the GS1
 * General Specifications, section 3.2 (from memory); others are refused rather than guessed at.
 */
const FIELDS: Readonly<Record<string, { readonly length: number; readonly fixed: boolean; readonly checked?: true }>> =
  {
    '00': { length: 18, fixed: true, checked: true },
    '01': { length: 14, fixed: true, checked: true },
    '02': { length: 14, fixed: true, checked: true },
    '10': { length: 20, fixed: false },
    '11': { length: 6, fixed: true },
    '13': { length: 6, fixed: true },
    '15': { length: 6, fixed: true },
    '17': { length: 6, fixed: true },
    '20': { length: 2, fixed: true },
    '21': { length: 20, fixed: false },
    '30': { length: 8, fixed: false },
    '37': { length: 8, fixed: false },
    '240': { length: 30, fixed: false },
    '241': { length: 30, fixed: false },
  };

export type Gs1Problem =
  | { readonly code: 'unknown-field'; readonly at: string }
  | {
      readonly code: 'too-short' | 'too-long' | 'wrong-check-digit' | 'twice';
      readonly field: string;
      readonly value: string;
    };

export type Gs1Reading =
  | { readonly ok: true; readonly fields: ReadonlyMap<string, string> }
  | { readonly ok: false; readonly problem: Gs1Problem };

/** The mark a scanner puts before what it read from a GS1-128, a GS1 Data Matrix, a GS1 QR code or a GS1 DataBar. */
const SYMBOLOGY = /^\](?:C1|d2|Q3|e0)/;

/** True for text that is a GS1 element string, as a scanner sends it or as it is printed, with brackets. */
export function looksLikeGs1(text: string): boolean {
  return (
    SYMBOLOGY.test(text) || text.includes(FNC1) || /^\(\d{2,4}\)/.test(text.trim()) || /^01\d{14}(?:\d|$)/.test(text)
  );
}

/**
 * Reads an element string into its fields. A field without fixed length ends at FNC1 or at the end of the text; with
 * brackets, at the next bracket.
 */
export function readGs1(text: string): Gs1Reading {
  const bare = text.replace(SYMBOLOGY, '').trim();
  return bare.startsWith('(') ? readBracketed(bare) : readPlain(bare);
}

function readBracketed(text: string): Gs1Reading {
  const parts = [...text.matchAll(/\((\d{2,4})\)([^(]*)/g)].map(([, field, value]) => [field!, value!.trim()] as const);
  return collect(parts);
}

function readPlain(text: string): Gs1Reading {
  const parts: (readonly [string, string])[] = [];
  let rest = text.startsWith(FNC1) ? text.slice(1) : text;
  while (rest !== '') {
    const field = [2, 3].map((length) => rest.slice(0, length)).find((one) => one in FIELDS);
    if (field === undefined) return { ok: false, problem: { code: 'unknown-field', at: rest.slice(0, 4) } };
    const body = rest.slice(field.length);
    const end = body.indexOf(FNC1);
    const { length, fixed } = FIELDS[field]!;
    const value = fixed ? body.slice(0, length) : end < 0 ? body : body.slice(0, end);
    parts.push([field, value]);
    rest = body.slice(value.length);
    if (rest.startsWith(FNC1)) rest = rest.slice(1);
  }
  return collect(parts);
}

function collect(parts: readonly (readonly [string, string])[]): Gs1Reading {
  const fields = new Map<string, string>();
  for (const [field, value] of parts) {
    const known = FIELDS[field];
    if (!known) return { ok: false, problem: { code: 'unknown-field', at: field } };
    if (fields.has(field)) return { ok: false, problem: { code: 'twice', field, value } };
    if (value.length > known.length) return { ok: false, problem: { code: 'too-long', field, value } };
    if (value === '' || (known.fixed && value.length < known.length)) {
      return { ok: false, problem: { code: 'too-short', field, value } };
    }
    if (known.checked && !hasRightCheckDigit(value)) {
      return { ok: false, problem: { code: 'wrong-check-digit', field, value } };
    }
    fields.set(field, value);
  }
  return { ok: true, fields };
}

/** What is wrong, in one sentence for the person with the scanner. */
export function sayGs1Problem(problem: Gs1Problem): string {
  if (problem.code === 'unknown-field') return `The code has a field “${problem.at}” that is not read here.`;
  const { field, value } = problem;
  if (problem.code === 'wrong-check-digit') return `The check digit of ${value} is wrong: scan it again, or type it.`;
  if (problem.code === 'twice') return `The code has the field ${field} twice.`;
  const how = problem.code === 'too-long' ? 'longer' : 'shorter';
  return `The field ${field} is ${how} than it may be (“${value}”): scan the code again.`;
}
