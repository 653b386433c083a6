import type { TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { nextRevision, writtenDown } from './estimate-as-it-stands';

/** The largest sum that can be kept, in minor units. */
const MOST_MINOR = 2_000_000_000;

/** Writes the estimate down as it stands, as its next revision. One that says what the newest says already is none. */
export function writeEstimate(ports: Ports, actor: Actor, on: OnTicket): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, on, async (whole, tx) => {
    const revisions = await tx.estimates.ofTicket(on.id);
    const next = nextRevision(whole, revisions);
    if (!next) return refused('already-done', `Revision ${revisions[0]!.revision} says the same already.`);
    if (next.totalMinor > MOST_MINOR) return refused('bad-input', 'The estimate is too large to be kept.');
    return done({
      events: [writtenDown(next, actor)],
      after: (after) => after.estimates.add(on.id, next, actor.id),
    });
  });
}
