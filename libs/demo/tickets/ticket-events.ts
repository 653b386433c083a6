import type { DemoEvent, DemoTicket } from '../demo-shop';
import { stages } from '../demo-shop';
import type { Times } from './times';

const COUNTER = 'rosa';

/** The history of a ticket, oldest first. */
export function eventsOf(ticket: Omit<DemoTicket, 'events'>, times: Times): DemoEvent[] {
  const { technician, stage } = ticket;
  const reached = stages.indexOf(stage);
  const whens = [
    times.opened,
    times.found - 60_000,
    times.picked - 120_000,
    times.picked + 60_000,
    times.left + 60_000,
  ];
  const events: DemoEvent[] = [
    { at: times.opened, person: COUNTER, kind: 'opened', data: { complaint: ticket.complaint } },
  ];
  for (let n = 1; n <= reached; n++) {
    events.push({ at: whens[n]!, person: technician, kind: 'stage', data: { from: stages[n - 1], to: stages[n] } });
  }
  const found = ticket.records.filter(({ side }) => side === 'found').length;
  if (found > 0)
    events.push({ at: times.found, person: technician, kind: 'recorded', data: { side: 'found', places: found } });
  for (const pick of ticket.picks)
    events.push({
      at: pick.at,
      person: technician,
      kind: 'picked',
      data: { part: pick.part, quantity: pick.quantity, purpose: pick.purpose },
    });
  if (ticket.authorisation)
    events.push({ at: times.picked, person: COUNTER, kind: 'authorised', data: { ...ticket.authorisation } });
  const left = ticket.records.filter(({ side }) => side === 'left').length;
  if (left > 0)
    events.push({ at: times.left, person: technician, kind: 'recorded', data: { side: 'left', places: left } });
  if (ticket.holdReason)
    events.push({ at: times.left + 90_000, person: technician, kind: 'held', data: { reason: ticket.holdReason } });
  const ended = times.closed;
  if (ended !== null) {
    const kind = ticket.handedOver ? 'handed-over' : 'cancelled';
    events.push({ at: ended, person: COUNTER, kind, data: ticket.cancelReason ? { reason: ticket.cancelReason } : {} });
  }
  return events.sort((a, b) => a.at - b.at);
}
