import type { RulingPiece, RulingView } from '../../../../../libs/contracts';

/** A part that a paper bars, with why and which paper says it; `always` for everything that the unit can be. */
export type BarredPart = RulingPiece['barred'][number] & { readonly always: boolean };

/** Everything that the rulings bar for some of what the unit can be, each bar once. */
export function barredBy(rulings: readonly RulingView[]): BarredPart[] {
  const all = rulings.flatMap(({ pieces }) =>
    pieces
      .flatMap(({ barred }) => barred)
      .map((bar) => ({
        ...bar,
        always: pieces.every(({ barred }) => barred.some((one) => keyOf(one) === keyOf(bar))),
      })),
  );
  return [...new Map(all.map((bar) => [keyOf(bar), bar])).values()];
}

const keyOf = ({ part, rule }: RulingPiece['barred'][number]): string => `${part.key} ${rule}`;

/**
 * Those of the barred parts that a text means: by letters and figures alone, or by the part it was read as, which is how
 * the pack marks of every maker and the bar codes of bags are known.
 */
export function barredByText(barred: readonly BarredPart[], text: string, readAs: string | null): BarredPart[] {
  const typed = squeezed(text);
  return barred.filter(({ part }) => part.key === readAs || (typed !== '' && squeezed(part.number) === typed));
}

const squeezed = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]/g, '');
