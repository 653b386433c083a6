import type { OrderLine } from '../../contracts';

/**
 * How many pieces to order: enough that, once all that waits is served, more than the reorder point is there; at least
 * the usual order where the reorder point is reached; always whole packs.
 */
export function howMany({
  free,
  coming,
  waited,
  reorderPoint,
  orderQuantity,
  packSize,
}: Pick<OrderLine, 'free' | 'coming' | 'waited' | 'reorderPoint' | 'orderQuantity' | 'packSize'>): number {
  const left = free + coming - waited;
  const lacking = Math.max(0, reorderPoint === null ? -left : reorderPoint + 1 - left);
  if (lacking === 0) return 0;
  const wanted = reorderPoint === null ? lacking : Math.max(lacking, orderQuantity ?? 0);
  return Math.ceil(wanted / packSize) * packSize;
}
