/** A whole number as typed; null for an empty field, NaN, which nothing takes, for anything else. */
export function numberOrNull(text: string): number | null {
  if (text.trim() === '') return null;
  return /^\s*\d+\s*$/.test(text) ? Number(text) : NaN;
}
