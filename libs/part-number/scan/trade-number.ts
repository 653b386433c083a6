import { checkDigit, hasRightCheckDigit } from './check-digit';
import { looksLikeGs1, readGs1 } from './read-gs1';

/** How many digits a trade number (GTIN) has: GS1 General Specifications, section 3.3.2 (from memory). */
const LENGTHS = [8, 12, 13, 14];

export type TradeNumberReading =
  | { readonly ok: true; /** fourteen digits */ readonly gtin: string }
  | { readonly ok: false; /** what is wrong, without the number */ readonly problem: string };

/**
 * Reads a trade number as it is printed under a bar code, blanks and dashes aside, into the fourteen digits it is kept
 * as: the shorter forms with zeros before them. Its check digit must be right.
 *
 *   readTradeNumber('629 1041 500213')   { ok: true, gtin: '06291041500213' }
 */
export function readTradeNumber(text: string): TradeNumberReading {
  const digits = text.replace(/[\s-]/g, '');
  if (!/^\d+$/.test(digits) || !LENGTHS.includes(digits.length) || /^0+$/.test(digits)) {
    return { ok: false, problem: 'a trade number (GTIN) has 8, 12, 13 or 14 digits' };
  }
  if (!hasRightCheckDigit(digits)) {
    const wanted = checkDigit(digits.slice(0, -1));
    return { ok: false, problem: `its last digit should be ${wanted} by the digits before it; read it again` };
  }
  return { ok: true, gtin: digits.padStart(14, '0') };
}

/** A trade number as bags show it: without the zeros that were put before it. */
export function writeTradeNumber(gtin: string): string {
  const digits = gtin.replace(/^0+/, '');
  return digits.padStart(LENGTHS.find((length) => length >= digits.length) ?? 14, '0');
}

/** The trade numbers that a scan or a typed text names, as they are kept; none where it is something else. */
export function tradeNumbersIn(text: string): readonly string[] {
  if (looksLikeGs1(text)) {
    const read = readGs1(text);
    return read.ok ? ['01', '02'].flatMap((field) => read.fields.get(field) ?? []) : [];
  }
  const read = readTradeNumber(text);
  return read.ok ? [read.gtin] : [];
}
