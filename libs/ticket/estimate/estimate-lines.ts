/** One line of an estimate: a part, labour, or something else that is asked for. The amount is for the whole line. */
export interface EstimateLine {
  readonly kind: 'part' | 'spare' | 'labour' | 'other';
  /** The part's number; null for a line that is no part. */
  readonly part: string | null;
  readonly what: string;
  readonly quantity: number;
  /** Of labour; 0 on other lines. */
  readonly minutes: number;
  readonly amountMinor: number;
}

/** True when two estimates ask for the same things at the same prices, in the same order. */
export function sameLines(a: readonly EstimateLine[], b: readonly EstimateLine[]): boolean {
  const text = (lines: readonly EstimateLine[]) =>
    JSON.stringify(
      lines.map(({ kind, part, what, quantity, minutes, amountMinor }) => [
        kind,
        part,
        what,
        quantity,
        minutes,
        amountMinor,
      ]),
    );
  return text(a) === text(b);
}
