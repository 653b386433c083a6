import type { Authorise, TicketView } from '../../contracts';
import type { Actor } from '../actor';
import { changeTicket, type OnTicket } from '../change-ticket/index';
import { nextRevision, writtenDown } from '../estimate-work/estimate-as-it-stands';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/**
 * Records the owner's yes: who said it, how, to which amount and to which revision of the estimate. Said to the estimate
 * as it stands, that is written down first where no revision says the same. A later yes takes the place of an earlier
 * one, which stays in the history.
 */
export function authorise(
  ports: Ports,
  actor: Actor,
  { id, version, ...yes }: OnTicket & Authorise,
): Promise<Outcome<TicketView>> {
  return changeTicket(ports, actor, { id, version }, async (whole, tx) => {
    const revisions = await tx.estimates.ofTicket(id);
    const asked = yes.revision;
    if (asked !== undefined && !revisions.some((one) => one.revision === asked)) {
      return refused('bad-input', `The estimate has no revision ${asked}.`, { field: 'revision' });
    }
    const next = asked === undefined ? nextRevision(whole, revisions) : null;
    const revision = asked ?? next?.revision ?? revisions[0]!.revision;
    const word = { ...yes, revision };
    return done({
      patch: { authorisation: { ...word, at: new Date(ports.clock.now()).toISOString(), recordedBy: actor.name } },
      events: [...(next ? [writtenDown(next, actor)] : []), { kind: 'authorised', data: word, personId: actor.id }],
      after: async (after) => {
        if (next) await after.estimates.add(id, next, actor.id);
      },
    });
  });
}
