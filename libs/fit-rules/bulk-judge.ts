import type { Day, DaySet } from '../day';
import type { PartKey } from '../part-number';
import { CAME_WITH_UNIT, columnDay } from './bulk-columns';
import { ClassSlots, type ClassBlock } from './class-slots';
import type { FactsClasses } from './facts-classes';
import { ALLOWED, DISPUTED, NO, REQUIRED } from './part-outcome';
import { lastAtOrBefore, type PositionBook, type RulebookHistory } from './rulebook-history';
import { NOTHING_SOUGHT, SlotColumns, type SlotRows } from './slot-columns';
import { ThenSlots } from './then-slots';
import { segmentsOf } from './slot-segments';
import type { SlotFacts } from './unit-facts';
import { UnitSlots } from './unit-slots';
import { verdicts } from './verdict';

/** One line and position. */
interface Place {
  readonly book: PositionBook;
  readonly classes: FactsClasses;
  /** The stretch of its in-force days that today lies in. */
  readonly today: number;
  readonly block: ClassBlock;
}

/** Columns of installs to judge, one row per index. Days are whole numbers; see OPEN_START and OPEN_END. */
export interface InstallColumns {
  readonly slot: Int32Array;
  readonly part: Int32Array;
  readonly builtFrom: Int32Array;
  readonly builtTo: Int32Array;
  /** CAME_WITH_UNIT where it came with the unit or the day is not known. */
  readonly fittedOn: Int32Array;
}

const [RIGHT_CODE, ALLOWED_CODE, OUTDATED_CODE, WRONG_CODE, UNDECIDED_CODE, DISPUTED_CODE] = verdicts.map(
  (_, i) => i,
) as [number, number, number, number, number, number];

/** The verdict for every combination of bits; a plain `no` is looked at again by the papers of the fitting day. */
const CODE_OF_BITS = Uint8Array.from({ length: 32 }, (_, bits) => {
  if (bits === REQUIRED) return RIGHT_CODE;
  if (bits === ALLOWED || bits === (REQUIRED | ALLOWED)) return ALLOWED_CODE;
  if (bits === NO) return WRONG_CODE;
  return (bits & DISPUTED) !== 0 ? DISPUTED_CODE : UNDECIDED_CODE;
});

/** The verdict on a part that does not belong today, by the bits that the papers of its fitting day give. */
const CODE_OF_LATE_BITS = CODE_OF_BITS.map((code) => (code <= ALLOWED_CODE ? OUTDATED_CODE : WRONG_CODE));

/** Room for rows that do not belong today, on their way to be judged by the papers of their fitting day. */
class LateRows implements SlotRows {
  /** Where each stands in the caller's columns. */
  readonly row: Int32Array;
  readonly slot: Int32Array;
  readonly part: Int32Array;
  readonly builtFrom: Int32Array;
  readonly builtTo: Int32Array;
  readonly codes: Uint8Array;

  constructor(readonly size: number) {
    this.row = new Int32Array(size);
    this.slot = new Int32Array(size);
    this.part = new Int32Array(size);
    this.builtFrom = new Int32Array(size);
    this.builtTo = new Int32Array(size);
    this.codes = new Uint8Array(size);
  }
}

/**
 * Judges many installs fast. A *slot* stands for one line, model, option set, serial and position: everything but the
 * build date, the part and the fitting day. Ask for the slot once per unit and place; then a verdict is one search over
 * a few boundaries in flat columns. Codes are indexes into {@link verdicts}.
 */
export class BulkJudge {
  private readonly places: Place[] = [];
  /** Facts of a unit that each slot stands for. */
  private readonly facts: SlotFacts[] = [];
  private readonly byClass = new ClassSlots();
  private readonly then = new ThenSlots();
  private readonly placeByBook = new Map<PositionBook, number>();
  private readonly partNumbers = new Map<PartKey, number>();
  private readonly columns = new SlotColumns();
  private lateRows = new LateRows(0);
  private readonly unitSlots = new UnitSlots((place, facts) => this.slotIn(place, facts));

  constructor(
    private readonly history: RulebookHistory,
    private readonly today: Day,
    private readonly now: number,
  ) {
    const number = (part: PartKey | null): void => {
      if (part !== null && !this.partNumbers.has(part)) this.partNumbers.set(part, this.partNumbers.size);
    };
    for (const { required, allowed, barred } of history.rules) {
      number(required);
      allowed.forEach(number);
      for (const { part } of barred) number(part);
    }
    for (const part of history.graph.parts()) number(part);
  }

  /** The number of a part; -1 for one that no rule and no supersession names: all such parts are judged alike. */
  partIndex(part: PartKey): number {
    return this.partNumbers.get(part) ?? -1;
  }

  /** The slot of a unit in a position, by today's papers. Facts that the rules never ask for make no other slot. */
  slotOf(facts: SlotFacts, position: string): number {
    return this.slotIn(this.placeOf(facts.line, position), facts);
  }

  /** The slot shared by every unit of the line, or -1 when rules ask for the model, an option or the serial. */
  plainSlotOf(line: string, position: string): number {
    const place = this.placeOf(line, position);
    return this.places[place]!.classes.isOne
      ? this.slotIn(place, { line, model: null, options: {}, serial: null })
      : -1;
  }

  /** A line with some of its positions, for those who judge whole units; see {@link slotsOfUnit}. */
  lineOf(line: string, positions: readonly string[]): number {
    const places = positions.map((position) => this.placeOf(line, position));
    return this.unitSlots.addLine(places, this.history.classesOf(line, positions));
  }

  /** Where the slots of a unit begin: one for each position that its line was made with, in that order. */
  slotsOfUnit(line: number, facts: SlotFacts): number {
    return this.unitSlots.startOf(line, facts);
  }

  /** The slot of the position with this order, among those that begin at `start`. */
  slotOfUnit(start: number, order: number): number {
    return this.unitSlots.slotAt(start, order);
  }

  /** The verdict for a set of possible build dates and one or more candidate parts; none at all is undecided. */
  verdictCodeOfSet(slot: number, parts: readonly number[], built: DaySet, fittedOn: number): number {
    let joint = -1;
    for (const part of parts) {
      const code = this.codeOverSet(slot, part, built, fittedOn);
      if (joint !== -1 && joint !== code) return UNDECIDED_CODE;
      joint = code;
    }
    return joint === -1 ? UNDECIDED_CODE : joint;
  }

  /** Judges rows 0 up to `count` into `codes`. A row with an empty span of build dates is undecided. */
  judgeColumns(rows: InstallColumns, count: number, codes: Uint8Array): void {
    // One more than there are rows: the place after the last late one is written too.
    if (this.lateRows.size <= count) this.lateRows = new LateRows(count + 1);
    const late = this.columns.codesOfColumns(rows, count, CODE_OF_BITS, codes, {
      bits: NO,
      rows: this.lateRows.row,
    });
    this.judgeLate(rows, late, codes);
  }

  /** Looks again at the first `late` of the late rows, by the papers of the day each was fitted. */
  private judgeLate(
    { slot, part, builtFrom, builtTo, fittedOn }: InstallColumns,
    late: number,
    codes: Uint8Array,
  ): void {
    const { then, lateRows } = this;
    const { row } = lateRows;
    let count = 0;
    for (let j = 0; j < late; j++) {
      const i = row[j]!;
      const [own, from, to, fitted] = [slot[i]!, builtFrom[i]!, builtTo[i]!, fittedOn[i]!];
      const stretch = then.stretchAt(own, fitted === CAME_WITH_UNIT ? from : fitted);
      if (fitted === CAME_WITH_UNIT && then.endsBefore(own, stretch, to)) {
        codes[i] = CODE_OF_LATE_BITS[this.thenBits(own, part[i]!, from, to, fitted)]!;
        continue;
      }
      row[count] = i;
      lateRows.slot[count] = this.thenSlot(own, stretch);
      lateRows.part[count] = part[i]!;
      lateRows.builtFrom[count] = from;
      lateRows.builtTo[count] = to;
      count++;
    }
    this.columns.codesOfColumns(lateRows, count, CODE_OF_LATE_BITS, lateRows.codes, NOTHING_SOUGHT);
    for (let j = 0; j < count; j++) codes[row[j]!] = lateRows.codes[j]!;
  }

  private placeOf(line: string, position: string): number {
    const book = this.history.book(line, position);
    let place = this.placeByBook.get(book);
    if (place === undefined) {
      const { classes, inForceCuts } = book;
      const block = this.byClass.block(inForceCuts.length, classes.count);
      place = this.places.push({ book, classes, today: lastAtOrBefore(inForceCuts, this.today), block }) - 1;
      this.then.addPlace(inForceCuts);
      this.placeByBook.set(book, place);
    }
    return place;
  }

  private slotIn(place: number, facts: SlotFacts): number {
    return this.slotBy(place, facts, this.places[place]!.today);
  }

  private codeOverSet(slot: number, part: number, built: DaySet, fittedOn: number): number {
    let bits = 0;
    for (const { from, to } of built) bits |= this.columns.bits(slot, part, columnDay(from), columnDay(to));
    if (bits !== NO) return CODE_OF_BITS[bits]!;
    let then = 0;
    for (const { from, to } of built) then |= this.thenBits(slot, part, columnDay(from), columnDay(to), fittedOn);
    return CODE_OF_LATE_BITS[then]!;
  }

  /** By the papers of the fitting day; of each build day, stretch by stretch, when it came with the unit. */
  private thenBits(slot: number, part: number, from: number, to: number, fittedOn: number): number {
    const { then, columns } = this;
    if (fittedOn !== CAME_WITH_UNIT) {
      return columns.bits(this.thenSlot(slot, then.stretchAt(slot, fittedOn)), part, from, to);
    }
    const count = then.stretchCount(slot);
    let bits = 0;
    for (let i = then.stretchAt(slot, from); i < count && then.startOf(slot, i) < to; i++) {
      const last = i + 1 < count ? Math.min(to, then.startOf(slot, i + 1)) : to;
      bits |= columns.bits(this.thenSlot(slot, i), part, Math.max(from, then.startOf(slot, i)), last);
    }
    return bits;
  }

  private thenSlot(slot: number, stretch: number): number {
    const known = this.then.get(slot, stretch);
    if (known !== -1) return known;
    const found = this.slotBy(this.then.placeOfSlot(slot), this.facts[slot]!, stretch);
    this.then.put(slot, stretch, found);
    return found;
  }

  private slotBy(place: number, facts: SlotFacts, stretch: number): number {
    const { classes, block } = this.places[place]!;
    const number = classes.of(facts);
    const known = this.byClass.get(block, stretch, number);
    if (known !== -1) return known;
    const slot = this.addSlot(place, facts, stretch);
    this.byClass.set(block, stretch, number, slot);
    return slot;
  }

  private addSlot(place: number, facts: SlotFacts, stretch: number): number {
    const { book } = this.places[place]!;
    const variants = book.variantsOf(facts, book.inForceCuts[stretch]!, this.now);
    const segments = segmentsOf(variants, this.history.graph, this.now);
    this.facts.push(facts);
    this.then.addSlot(place);
    return this.columns.add(segments, (part) => this.partNumbers.get(part)!);
  }
}
