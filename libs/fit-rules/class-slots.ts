import { IntColumn } from './bulk-columns';

/** Up to this many classes of one place have a number each in the column; more are hashed, as most are never met. */
const MOST_IN_COLUMN = 1024;

/** Where the slots of one line and position stand: per stretch of its in-force days, one per class of unit. */
export interface ClassBlock {
  /** Index of its first number in the column; -1 when it is hashed. */
  readonly first: number;
  /** Classes in each stretch. */
  readonly count: number;
  readonly hashed: Map<string, number> | null;
}

/** The slot of each place, stretch and class of units; all places share one flat column, so a look touches one number. */
export class ClassSlots {
  private readonly column = new IntColumn();

  /** Room for a place; an infinite count of classes takes texts for classes. */
  block(stretches: number, count: number): ClassBlock {
    if (count > MOST_IN_COLUMN) return { first: -1, count, hashed: new Map() };
    const first = this.column.length;
    for (let i = 0; i < stretches * count; i++) this.column.push(-1);
    return { first, count, hashed: null };
  }

  /** -1 for a class that has no slot yet. */
  get({ first, count, hashed }: ClassBlock, stretch: number, number: number | string): number {
    if (hashed === null) return this.column.values[first + stretch * count + (number as number)]!;
    return hashed.get(`${stretch} ${number}`) ?? -1;
  }

  set({ first, count, hashed }: ClassBlock, stretch: number, number: number | string, slot: number): void {
    if (hashed === null) this.column.values[first + stretch * count + (number as number)] = slot;
    else hashed.set(`${stretch} ${number}`, slot);
  }
}
