/** A part taken from the shelf to be fitted in a position. */
export interface FitPick {
  readonly id: number;
  readonly position: string;
  readonly part: string;
  readonly quantity: number;
}

/**
 * Which picks are fitted, by what was left in the places of their positions. Picks of the same part in the same
 * position are served in the order they were picked; a pick counts as fitted when all its pieces are in a place.
 */
export function fittedPicks(
  picks: readonly FitPick[],
  left: readonly { readonly position: string; readonly part: string }[],
): ReadonlySet<number> {
  const inPlace = new Map<string, number>();
  for (const { position, part } of left) {
    const key = JSON.stringify([position, part]);
    inPlace.set(key, (inPlace.get(key) ?? 0) + 1);
  }
  const fitted = new Set<number>();
  for (const pick of [...picks].sort((a, b) => a.id - b.id)) {
    const key = JSON.stringify([pick.position, pick.part]);
    const rest = inPlace.get(key) ?? 0;
    if (rest < pick.quantity) continue;
    inPlace.set(key, rest - pick.quantity);
    fitted.add(pick.id);
  }
  return fitted;
}
