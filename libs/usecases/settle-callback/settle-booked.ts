import type { Clock } from '../clock';
import type { Tables } from '../ports/store';

/** Closes the unit's callback when the ticket it was booked in on is handed over. */
export async function settleBooked(tx: Tables, _clock: Clock, unitId: number, ticketId: number): Promise<void> {
  const head = await tx.callbacks.lockOfUnit(unitId);
  if (head?.state !== 'booked' || head.ticketId !== ticketId) return;
  const ticket = await tx.tickets.byId(ticketId);
  await tx.callbacks.close(head.id, 'settled', `Handed over on ticket ${ticket?.number ?? ticketId}.`);
  await tx.live.tell('callback', head.id);
}
