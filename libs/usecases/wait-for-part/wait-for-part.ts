import type { TicketView, WaitForPart } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { wakeWaiting } from '../keep-shelf/index';
import { done, refused, type Outcome } from '../outcome';
import { readPartTexts } from '../read-part-text/read-part-text';
import type { Ports } from '../run';

/** The ticket waits for a part: it stands on the list of what to order, and the ticket wakes when it comes in. */
export function waitForPart(
  ports: Ports,
  actor: Actor,
  { id, version, position: code, partText, quantity }: OnTicket & WaitForPart,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, { id, version }, async (whole, tx) => {
    const position = code === null ? null : (whole.positions.get(code) ?? null);
    if (code !== null && !position)
      return refused('bad-input', `The unit has no position '${code}'.`, { field: 'position' });
    const read = (await readPartTexts(tx, [partText], whole.unit.maker?.code ?? null)).get(partText)!;
    if (!read.ok) return read;
    const { part } = read.value;
    const { locationId } = whole.ticket;
    const wait = { locationId, partId: part.id, positionId: position?.id ?? null, pieces: quantity };
    return done({
      events: [{ kind: 'waits', data: { part: part.number, quantity }, personId: actor.id }],
      after: async (after) => {
        // The list of what to order is read from the shelf, so the part has a place there from now on.
        await after.shelf.holdOrMake(locationId, part.id);
        await after.waits.put(id, wait, actor.id);
        await wakeWaiting(after, locationId, [part.id], actor.id);
        await after.live.tell('shelf', null);
      },
    });
  });
}

/** The ticket waits no longer. */
export function endWait(
  ports: Ports,
  actor: Actor,
  { waitId, ...on }: OnTicket & { waitId: number },
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, async (whole, tx) => {
    const wait = (await tx.waits.ofTicket(whole.ticket.id)).find((one) => one.id === waitId);
    if (!wait) return refused('not-found', `The ticket has no wait ${waitId}.`);
    return done({
      events: [{ kind: 'waits-no-more', data: { part: wait.part.number }, personId: actor.id }],
      after: async (after) => void (await after.waits.end(whole.ticket.id, waitId)),
    });
  });
}
