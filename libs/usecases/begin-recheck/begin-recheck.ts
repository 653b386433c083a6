import { judgeChunk } from '../judge-chunk/judge-chunk';
import { planChunks } from '../plan-chunks/plan-chunks';
import type { Ports } from '../run';

/**
 * Plans a recheck and judges its first chunk at once: a small bulletin has no other, and need not wait for a second
 * bell. Who dies in between leaves a chunk that is rung for when its lease has run out.
 */
export async function beginRecheck(
  ports: Ports,
  name: { readonly recheckId: number },
  unitsAChunk?: number,
): Promise<void> {
  const planned = await planChunks(ports, name, { unitsAChunk, keepFirst: true });
  if (planned) await judgeChunk(ports, { ...name, n: 0 });
}
