import type { Day } from '../../day';
import type { PartKey } from '../../part-number';
import type { Condition, DemoMarks, DemoPart, DemoPosition, DemoUnit } from '../demo-shop';
import type { Chance } from '../prng';
import type { WhatIsRight } from '../rulebook/what-is-right';

/** What sits in one place now. Part null: nothing. */
export interface Held {
  readonly part: PartKey | null;
  /** Null when it came with the unit. */
  readonly fittedOn: Day | null;
}

/** What every place of every unit holds, as the tickets go on. */
export class HeldParts {
  private readonly places = new Map<string, Held>();

  constructor(
    private readonly right: WhatIsRight,
    private readonly chance: Chance,
  ) {}

  /** What sits in a place; on first sight, what the works fitted or someone has put there since. */
  in(unit: DemoUnit, position: DemoPosition, place: number): Held {
    const key = `${unit.index} ${position.code} ${place}`;
    const known = this.places.get(key);
    if (known) return known;
    const held = {
      part: this.chance.happens(0.07) ? this.chance.oneOf(position.parts) : this.fromWorks(unit, position),
      fittedOn: null,
    };
    this.places.set(key, held);
    return held;
  }

  put(unit: DemoUnit, position: DemoPosition, place: number, held: Held): void {
    this.places.set(`${unit.index} ${position.code} ${place}`, held);
  }

  /** The works fits what the parts list of the day names; before there was a list, the oldest part. */
  private fromWorks(unit: DemoUnit, position: DemoPosition): PartKey {
    const { built } = unit.truth;
    return this.right(unit, position.code, built, null)?.required ?? position.parts[0]!;
  }
}

/** How a part is found: shear fasteners shear, other parts wear. */
export function conditionOf(position: DemoPosition, chance: Chance): Condition {
  return position.joint === null
    ? chance.weighted([
        ['sound', 52],
        ['worn', 46],
        ['missing', 2],
      ])
    : chance.weighted([
        ['sound', 60],
        ['worn', 18],
        ['sheared', 17],
        ['missing', 5],
      ]);
}

/** What a hand lens shows of a fastener whose number cannot be read, and every part of the position it can be. */
export function lookedAt(
  part: DemoPart,
  position: DemoPosition,
  parts: ReadonlyMap<PartKey, DemoPart>,
): { marks: DemoMarks; candidates: PartKey[] } | null {
  const { fastener } = part;
  if (fastener === null) return null;
  const alike = position.parts.filter((key) => {
    const other = parts.get(key)?.fastener;
    return (
      other?.diameterMm === fastener.diameterMm &&
      other.lengthMm === fastener.lengthMm &&
      !other.groove === !fastener.groove
    );
  });
  return {
    marks: {
      headMarks: sayHead(fastener.headMarks ?? null),
      diameterMm: fastener.diameterMm,
      lengthMm: fastener.lengthMm ?? null,
      grooved: Boolean(fastener.groove),
      finish: fastener.finish ?? null,
    },
    candidates: alike,
  };
}

function sayHead(marks: { kind: string; count?: number; text?: string } | null): string | null {
  if (marks === null) return null;
  if (marks.kind === 'radial-lines') return `${marks.count} radial lines`;
  return marks.kind === 'stamp' ? `stamp ${marks.text}` : 'none';
}
