import type { DemoPick, DemoRecord } from '../demo-shop';
import { stages } from '../demo-shop';
import type { Work } from './choose-work';
import type { RecordRoom } from './record-places';
import type { Visit } from './visits';

/** What was taken from the shelf: the parts that were fitted, or are about to be, and spares of shear fasteners. */
export function picksOf(
  visit: Visit,
  work: Work,
  records: readonly DemoRecord[],
  at: number,
  room: RecordRoom,
): DemoPick[] {
  if (visit.cancelled || stages.indexOf(visit.stage) < stages.indexOf('repair')) return [];
  const done = visit.stage === 'handover';
  const day = visit.closed ?? visit.opened;
  return work.worked.flatMap((position) => {
    const fitted = records.filter(
      (one) => one.side === 'left' && one.position === position.code && one.fittedOn === day,
    );
    const part = done ? fitted[0]?.part : room.right(visit.unit, position.code, day, at)?.required;
    const quantity = done ? fitted.length : position.placeNames.length;
    if (!part || quantity === 0) return [];
    const priceMinor = room.parts.get(part)!.priceMinor;
    const pick = { position: position.code, part, priceMinor, at };
    const spares = position.joint !== null && room.chance.happens(0.4);
    return [
      { ...pick, quantity, purpose: 'fit' as const, state: done ? ('fitted' as const) : ('picked' as const) },
      ...(spares
        ? [
            {
              ...pick,
              quantity: 2,
              purpose: 'spare' as const,
              state: visit.closed === null ? ('picked' as const) : ('given' as const),
            },
          ]
        : []),
    ];
  });
}
