/**
 * The check digit of a GS1 number, by modulo 10 with the weights 3 and 1 from the right (GS1 General Specifications,
 * section 7.9). `digits` come without their check digit.
 *
 *   checkDigit('730001100001')   7
 */
export function checkDigit(digits: string): number {
  const sum = [...digits].reverse().reduce((total, digit, at) => total + Number(digit) * (at % 2 === 0 ? 3 : 1), 0);
  return (10 - (sum % 10)) % 10;
}

/** True when the last digit is the check digit of those before it. */
export function hasRightCheckDigit(digits: string): boolean {
  return /^\d{2,}$/.test(digits) && checkDigit(digits.slice(0, -1)) === Number(digits.slice(-1));
}

/** The code on a unit's own tag: its number here, and a check digit, so that a misread one leads to no other unit. */
export function unitTagCode(unitId: number): string {
  return `U${unitId}-${checkDigit(String(unitId))}`;
}

/** Reads such a code; null for anything else, `right` false when the check digit is not its number's. */
export function readUnitTag(text: string): { readonly unitId: number; readonly right: boolean } | null {
  const match = /^U(\d{1,9})-(\d)$/i.exec(text.trim());
  if (!match) return null;
  const unitId = Number(match[1]);
  return { unitId, right: checkDigit(String(unitId)) === Number(match[2]) };
}
