import type { Clock } from '../clock';
import { judgeUnit } from '../judge-installs';
import type { TicketRow } from '../ports/ticket-store';
import type { Tables } from '../ports/store';
import { wakeWaiting } from './wake-waiting';

/**
 * To be called whenever picks of a ticket were added or changed their state: the shelf follows, whoever waits for what
 * became free is woken, and what the unit holds, loose parts among it, is judged again.
 */
export async function picksChanged(
  tx: Tables,
  clock: Clock,
  { id, unitId, locationId }: Pick<TicketRow, 'id' | 'unitId' | 'locationId'>,
  personId: number | null,
): Promise<void> {
  await shelfFollows(tx, { id, locationId }, personId);
  await tx.units.refreshInstalls(unitId);
  await judgeUnit(tx, clock, unitId);
}

/** The shelf's part of it alone. */
export async function shelfFollows(
  tx: Tables,
  { id, locationId }: Pick<TicketRow, 'id' | 'locationId'>,
  personId: number | null,
): Promise<void> {
  const freed = await tx.shelf.followPicks(id, personId);
  await wakeWaiting(tx, locationId, freed, personId);
}
