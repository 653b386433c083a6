import type { TicketView } from '../../../../../libs/contracts';
import type { Side } from './place-record';

/**
 * The side of the places that is written at the present stage; null when none is. Once parts are being picked, what was
 * found is written again only by someone who says so (`mending`).
 */
export function openSide(ticket: Pick<TicketView, 'stage' | 'closedAt' | 'onHold'>, mending: boolean): Side | null {
  if (ticket.closedAt !== null || ticket.onHold !== null) return null;
  if (ticket.stage === 'inspection') return 'found';
  if (ticket.stage === 'parts-selection') return mending ? 'found' : null;
  return ticket.stage === 'repair' ? 'left' : null;
}
