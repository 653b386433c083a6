import type { UnitIdentity, UnitView } from '../../contracts';
import type { Actor } from '../actor';
import { done, refused, type Outcome } from '../outcome';
import type { Ports } from '../run';
import { changeUnit, type OnUnit } from './change-unit';
import { resolveIdentity } from './resolve-identity';

/**
 * Records what the data plate says a unit is. The product line stays once a part was recorded in one of its
 * positions: the records would otherwise speak of places the unit does not have.
 */
export function identifyUnit(
  ports: Ports,
  actor: Actor,
  { identity, ...on }: OnUnit & { identity: UnitIdentity },
): Promise<Outcome<UnitView>> {
  return changeUnit(ports, actor, on, async ({ unit }, tx) => {
    const resolved = await resolveIdentity(tx, identity);
    if (!resolved.ok) return resolved;
    const { columns } = resolved.value;
    if (unit.line && columns.lineId !== unit.line.id && (await tx.units.hasRecords(unit.id))) {
      return refused('conflict', `Parts are recorded for this unit as a ${unit.line.name}; its line stays.`, {
        field: 'lineCode',
      });
    }
    await tx.units.setIdentity(unit.id, columns);
    return done({
      kind: 'identity',
      data: { lineCode: identity.lineCode, serial: identity.serial },
      personId: actor.id,
    });
  });
}
