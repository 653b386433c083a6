import type { PartKey } from '../../part-number';
import type { DemoEvent, DemoPart, DemoTicket } from '../demo-shop';
import { stages } from '../demo-shop';
import type { Times } from './times';

const COUNTER = 'rosa';
const MINUTE = 60_000;

/** The history of a ticket, oldest first, in the words the page knows. */
export function eventsOf(
  ticket: Omit<DemoTicket, 'events'>,
  times: Times,
  parts: ReadonlyMap<PartKey, DemoPart>,
): DemoEvent[] {
  const { technician, complaint, authorisation } = ticket;
  const events: DemoEvent[] = [{ at: times.opened, person: COUNTER, kind: 'opened', data: { complaint } }];
  const add = (at: number, kind: string, data: DemoEvent['data'], person = technician) =>
    void events.push({ at, person, kind, data });
  addMoves(ticket, times, add);
  addRecorded(ticket, times, add);
  for (const { at, part, quantity, purpose } of ticket.picks) {
    add(at, 'picked', { part: parts.get(part)!.number, quantity, for: purpose === 'fit' ? 'to fit' : 'as a spare' });
  }
  if (authorisation) add(times.picked, 'authorised', { by: authorisation.by, how: authorisation.how }, COUNTER);
  if (ticket.holdReason) add(times.left + 2 * MINUTE, 'held', { reason: ticket.holdReason });
  if (times.closed !== null) {
    const data = ticket.cancelReason ? { reason: ticket.cancelReason } : {};
    add(times.closed, ticket.handedOver ? 'handed-over' : 'cancelled', data, COUNTER);
  }
  return events.sort((a, b) => a.at - b.at);
}

type Add = (at: number, kind: string, data: DemoEvent['data']) => void;

function addMoves({ stage }: Omit<DemoTicket, 'events'>, times: Times, add: Add): void {
  const whens = [
    times.opened,
    times.found - MINUTE,
    times.picked - 2 * MINUTE,
    times.picked + MINUTE,
    times.left + MINUTE,
  ];
  for (let n = 1; n <= stages.indexOf(stage); n++) add(whens[n]!, 'moved', { from: stages[n - 1], to: stages[n] });
}

function addRecorded({ records }: Omit<DemoTicket, 'events'>, times: Times, add: Add): void {
  for (const side of ['found', 'left'] as const) {
    const looked = records.filter((record) => record.side === side && record.leftOutWhy === null);
    const positions = [...new Set(looked.map(({ position }) => position))].join(', ');
    if (looked.length > 0) add(times[side], side, { what: `${looked.length} places (${positions})` });
  }
}
