import type { DecideFlag, FlagView } from '../../contracts';
import { parseDay } from '../../day';
import { stageBefore, type Stage } from '../../ticket';
import type { Actor } from '../actor';
import { orderCallback } from '../order-callback/order-callback';
import { done, refused, type Outcome } from '../outcome';
import type { FlagDecision, FlagRow, Tables } from '../ports/index';
import type { Ports } from '../run';
import { loadRulebook } from '../rulebook';
import { flagView } from '../view-ticket/index';

type Input = DecideFlag & { readonly id: number; readonly version: number };

const STATES = { accept: 'accepted', 'send-back': 'sent-back', callback: 'callback' } as const;

/**
 * A manager's review of one flag: accept it with a reason and until when, send the unit back to the bench, or order a
 * callback. The decision keeps the revision of the rulebook it was made on.
 */
export async function decideFlag(ports: Ports, actor: Actor, input: Input): Promise<Outcome<FlagView>> {
  const { store, clock } = ports;
  const outcome = await store.transaction(async (tx) => {
    const { revision } = await loadRulebook(tx, clock);
    const flag = await tx.flags.byId(input.id);
    if (flag) await tx.units.lock(flag.unitId);
    const ticket = flag && (await tx.tickets.byId(flag.ticket.id));
    if (!flag || !ticket || ticket.locationId !== actor.locationId)
      return refused('not-found', `There is no flag ${input.id}.`);
    if (flag.version !== input.version) return stale(flag);
    const wrong = whyNot(flag, input, ticket.closedAt !== null, clock.today());
    if (wrong) return wrong;
    const decision: FlagDecision = {
      state: STATES[input.decision],
      why: input.reason,
      until: input.decision === 'accept' ? input.until : null,
      personId: actor.id,
      revision,
    };
    if (!(await tx.flags.decide(flag.id, input.version, decision)))
      return stale((await tx.flags.byId(flag.id)) ?? flag);
    await follow(ports, tx, actor, flag, input);
    return done(null);
  });
  return outcome.ok ? done(flagView((await store.flags.byId(input.id))!)) : outcome;
}

function whyNot(flag: FlagRow, { decision, until }: Input, closed: boolean, today: number): Outcome<never> | null {
  if (flag.state === 'cleared') return refused('already-done', 'The flag was cleared: what it spoke of is put right.');
  if (flag.state === 'callback') return refused('already-done', 'A callback was ordered for this flag already.');
  if (closed) return refused('wrong-stage', `Ticket ${flag.ticket.number} is closed; its flags stay as they are.`);
  if (decision === 'accept' && until !== null && (parseDay(until) ?? 0) < today) {
    return refused('bad-input', `until is ${until}, but must be today or later.`, { field: 'until' });
  }
  return null;
}

/** What a decision brings along on the ticket. */
async function follow({ clock }: Ports, tx: Tables, actor: Actor, flag: FlagRow, input: Input): Promise<void> {
  const { id, number } = flag.ticket;
  const place = `${flag.positionName}, ${flag.placeName}`;
  const data = { reason: input.reason, place, ...(input.until === null ? {} : { until: input.until }) };
  const decided = { kind: `flag-${STATES[input.decision]}`, data, personId: actor.id };
  const back = input.decision === 'send-back' ? sentBackTo(flag.ticket.stage) : null;
  const ticket = (await tx.tickets.byId(id))!;
  const changed = await tx.tickets.change(id, ticket.version, back ? { stage: back } : {});
  if (!changed) throw new Error(`ticket ${number} changed while a decision on it was written`);
  const moved = {
    kind: 'moved-back',
    data: { from: ticket.stage, to: back, reason: input.reason },
    personId: actor.id,
  };
  await tx.tickets.addEvents(id, back ? [decided, moved] : [decided]);
  if (input.decision === 'callback') {
    const { unitId, positionId, part } = flag;
    const order = { unitId, flagId: flag.id, positionId, place: flag.place, partId: part?.id ?? null };
    await orderCallback(tx, clock, actor, { ...order, reason: input.reason });
  }
  await tx.live.tell('flag', flag.id);
  await tx.live.tell('ticket', id);
}

/** A unit that is past the bench goes back to it; one that is not there yet stays where it is. */
function sentBackTo(stage: Stage): Stage | null {
  return stage === 'handover' || stage === 'repair' ? stageBefore(stage) : null;
}

const stale = (flag: FlagRow) =>
  refused('stale', 'The flag was decided by somebody else meanwhile; look at it again.', { current: flagView(flag) });
