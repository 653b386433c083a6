import type { Tables } from '../ports/store';

/**
 * Wakes the tickets that wait for these parts, now that more of them is free: in the order in which they began to wait.
 * Each has it in its history, and open pages hear of it. Answers their numbers.
 */
export async function wakeWaiting(
  tx: Tables,
  locationId: number,
  partIds: readonly number[],
  personId: number | null,
): Promise<readonly string[]> {
  if (partIds.length === 0) return [];
  const woken = await tx.waits.wake(locationId, partIds);
  for (const { ticketId, part, pieces, bin } of woken) {
    await tx.tickets.addEvents(ticketId, [{ kind: 'part-here', data: { part, quantity: pieces, bin }, personId }]);
    await tx.live.tell('ticket', ticketId);
  }
  return woken.map(({ ticket }) => ticket);
}
