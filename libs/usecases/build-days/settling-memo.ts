import type { PreparedShop, Settling } from '../../build-date';

/** Enough for the units of a day; the oldest go first. */
const MOST_KEPT = 500;
const kept = new WeakMap<PreparedShop, Map<string, Settling>>();

/**
 * What would settle a question is found by many trials, and asked again each time the same unit is looked at. The
 * question in full is the key, so an answer can be kept for as long as the shop's schemes stay as they are.
 */
export function settlingMemo(shop: PreparedShop, question: object, answer: () => Settling): Settling {
  const memo = kept.get(shop) ?? new Map<string, Settling>();
  kept.set(shop, memo);
  const key = JSON.stringify(question);
  const known = memo.get(key);
  if (known) return known;
  const found = answer();
  memo.set(key, found);
  if (memo.size > MOST_KEPT) memo.delete(memo.keys().next().value!);
  return found;
}
