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

/** Those of the barred parts that a text can mean: letters and figures alone count, and a pack mark may follow. */
export function barredByText(barred: readonly BarredPart[], text: string): BarredPart[] {
  const typed = squeezed(text.replace(/\/P\d+$/i, ''));
  return typed === '' ? [] : barred.filter(({ part }) => squeezed(part.number) === typed);
}

const squeezed = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]/g, '');
