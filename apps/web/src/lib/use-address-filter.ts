import { startTransition, useOptimistic } from 'react';

/**
 * A filter that stands in the address. A choice shows at once and the next one builds on it, also while the address has
 * not followed yet: on a slow machine a letter or a tick would otherwise be taken back by what the address still says.
 */
export function useAddressFilter<T extends object>(
  filter: T,
  go: (wanted: T) => Promise<void>,
): readonly [shown: T, choose: (wanted: T) => void] {
  const [shown, show] = useOptimistic(filter);
  const choose = (wanted: T) =>
    startTransition(async () => {
      show(wanted);
      await go(wanted);
    });
  return [shown, choose];
}
