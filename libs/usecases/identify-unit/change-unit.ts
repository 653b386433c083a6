import type { UnitView } from '../../contracts';
import type { Actor } from '../actor';
import { recomputeUnit } from '../build-days/index';
import { done, refused, type Outcome } from '../outcome';
import type { NewEvent, Tables } from '../ports/index';
import { loadRulebook } from '../rulebook';
import type { Ports } from '../run';
import { loadUnit, unitView, type WholeUnit } from '../view-unit/index';

/** Which unit a change is made on, and the version the person had before their eyes. */
export interface OnUnit {
  readonly id: number;
  readonly version: number;
}

type Plan = (whole: WholeUnit, tx: Tables) => Promise<Outcome<NewEvent>>;

/**
 * Every change of what is known of a unit goes this way: the version is compared and raised, the plan writes, the
 * possible build days are worked out again, and all the unit holds is judged again at once, in one transaction. The
 * history of the ticket that is open for it takes the event.
 */
export async function changeUnit(
  ports: Ports,
  actor: Actor,
  { id, version }: OnUnit,
  plan: Plan,
): Promise<Outcome<UnitView>> {
  const outcome = await ports.store.transaction(async (tx) => {
    // The rulebook is held before the unit, in the order in which rechecks do it: no two can wait for each other.
    await loadRulebook(tx, ports.clock);
    await tx.units.lock(id);
    const whole = await loadUnit(tx, ports.clock, id);
    if (!whole || !(await tx.units.isAt(id, actor.locationId))) return noSuchUnit(id);
    if (whole.unit.version !== version) return staleUnit(whole);
    const planned = await plan(whole, tx);
    if (!planned.ok) return planned;
    await tx.units.claim(id, version);
    await recomputeUnit(tx, ports.clock, id);
    const ticket = await tx.units.openTicket(id);
    if (ticket) await tx.tickets.addEvents(ticket.id, [planned.value]);
    await tx.live.tell('unit', id);
    return done(null);
  });
  if (!outcome.ok) return outcome;
  const after = await loadUnit(ports.store, ports.clock, id);
  return after ? done(unitView(after)) : noSuchUnit(id);
}

export const noSuchUnit = (id: number) => refused('not-found', `There is no unit ${id} at this location.`);

const staleUnit = (whole: WholeUnit) =>
  refused('stale', 'The unit was changed by somebody else meanwhile; look at it again.', { current: unitView(whole) });
