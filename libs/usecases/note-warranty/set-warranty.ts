import type { SetWarranty, UnitView } from '../../contracts';
import { day, sayDay } from '../../day';
import type { Actor } from '../actor';
import { changeUnit, type OnUnit } from '../identify-unit/index';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';

/** Writes down when the unit was bought and for how many months its maker stands for it; null takes that back. */
export function setWarranty(
  ports: Ports,
  actor: Actor,
  { warranty, ...on }: OnUnit & SetWarranty,
): Promise<Outcome<UnitView>> {
  return changeUnit(ports, actor, on, async ({ unit, today }, tx) => {
    if (warranty !== null && day(warranty.boughtOn) > today) {
      const detail = `The day of purchase ${sayDay(day(warranty.boughtOn))} has not come yet; expected today or a day before.`;
      return refused('bad-input', detail, { field: 'warranty.boughtOn' });
    }
    await tx.units.setWarranty(unit.id, warranty);
    return done({ kind: 'warranty', data: warranty ?? {}, personId: actor.id });
  });
}
