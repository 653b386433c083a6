import { IntColumn } from './bulk-columns';
import type { FactsClasses } from './facts-classes';
import type { SlotFacts } from './unit-facts';

/** Up to this many classes of one line have a number each in the column; more are hashed, as most are never met. */
const MOST_IN_COLUMN = 1024;

interface LineOfPlaces {
  readonly places: readonly number[];
  readonly classes: FactsClasses;
  /** Where the slots of each class stand, plus one; 0 for a class that is not met yet. */
  readonly byNumber: Int32Array | null;
  readonly byText: Map<number | string, number>;
}

/**
 * The slots of all places of a unit side by side: what tells units of a line apart is looked at once per unit, not once
 * per place, and a unit's slots lie within a line or two of the processor's cache.
 */
export class UnitSlots {
  private readonly lines: LineOfPlaces[] = [];
  private readonly slots = new IntColumn();

  constructor(private readonly slotIn: (place: number, facts: SlotFacts) => number) {}

  /** Adds a line with places in an order of the caller's and the classes of units that the rules of all of them make. */
  addLine(places: readonly number[], classes: FactsClasses): number {
    const byNumber = classes.count <= MOST_IN_COLUMN ? new Int32Array(classes.count) : null;
    return this.lines.push({ places, classes, byNumber, byText: new Map() }) - 1;
  }

  /** Where the unit's slots begin. */
  startOf(line: number, facts: SlotFacts): number {
    const { classes, byNumber, byText } = this.lines[line]!;
    const number = classes.of(facts);
    const known = byNumber !== null ? byNumber[number as number]! : (byText.get(number) ?? 0);
    return known === 0 ? this.add(this.lines[line]!, number, facts) : known - 1;
  }

  /** The slot of the unit whose slots begin at `start`, in the line's place of that order. */
  slotAt(start: number, order: number): number {
    return this.slots.values[start + order]!;
  }

  private add({ places, byNumber, byText }: LineOfPlaces, number: number | string, facts: SlotFacts): number {
    const slots = places.map((place) => this.slotIn(place, facts));
    const start = this.slots.length;
    for (const slot of slots) this.slots.push(slot);
    if (byNumber !== null) byNumber[number as number] = start + 1;
    else byText.set(number, start + 1);
    return start;
  }
}
