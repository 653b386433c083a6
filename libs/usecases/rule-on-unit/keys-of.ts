import type { Ruling } from '../../fit-rules';

/** Every part that the rulings name, so that all can be looked up at once. */
export function partKeysOf(rulings: readonly Ruling[]): string[] {
  const keys = rulings.flatMap(({ pieces }) =>
    pieces.flatMap(({ outcome }) => {
      const sayings =
        outcome.kind === 'decided' ? [outcome.saying] : outcome.kind === 'disputed' ? outcome.sayings : [];
      const said = sayings.flatMap(({ required, allowed }) => (required === null ? allowed : [required, ...allowed]));
      return [...said, ...outcome.barred.map((bar) => bar.part)];
    }),
  );
  return [...new Set(keys)];
}
