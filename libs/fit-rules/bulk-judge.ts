import type { Day, DaySet } from '../day';
import type { PartKey } from '../part-number';
import { CAME_WITH_UNIT, columnDay, IntColumn } from './bulk-columns';
import { ALLOWED, DISPUTED, NO, REQUIRED } from './part-outcome';
import { lastAtOrBefore, type PositionBook, type RulebookHistory } from './rulebook-history';
import { segmentsOf } from './slot-segments';
import type { SlotFacts } from './unit-facts';
import { verdicts } from './verdict';

/** Columns of installs to judge, one row per index. Days are whole numbers; see OPEN_START and OPEN_END. */
export interface InstallColumns {
  readonly slot: Int32Array;
  readonly part: Int32Array;
  readonly builtFrom: Int32Array;
  readonly builtTo: Int32Array;
  /** CAME_WITH_UNIT where it came with the unit or the day is not known. */
  readonly fittedOn: Int32Array;
}

interface Slot {
  readonly book: PositionBook;
  readonly facts: SlotFacts;
  /** Per stretch of the book's in-force days, the slot by those papers; -1 until asked for. */
  then: Int32Array | null;
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

/**
 * Judges many installs fast. A *slot* stands for one line, model, option set, serial and position: everything but the
 * build date, the part and the fitting day. Ask for the slot once per unit and place; then a verdict is one search over
 * a few boundaries in flat columns. Codes are indexes into {@link verdicts}.
 */
export class BulkJudge {
  private readonly slots: Slot[] = [];
  private readonly slotByKey = new Map<PositionBook, Map<string, number>>();
  private readonly partNumbers = new Map<PartKey, number>();
  /** Segments of slot s: `slotAt[s]` up to `slotAt[s + 1]`. Named parts of segment g: `namedAt[g]` up to `namedAt[g + 1]`. */
  private readonly slotAt = new IntColumn();
  private readonly cuts = new IntColumn();
  private readonly others = new IntColumn();
  private readonly namedAt = new IntColumn();
  private readonly namedPart = new IntColumn();
  private readonly namedBits = new IntColumn();

  constructor(
    private readonly history: RulebookHistory,
    private readonly today: Day,
    private readonly now: number,
  ) {
    for (const part of history.parts()) this.partNumbers.set(part, this.partNumbers.size);
    this.slotAt.push(0);
    this.namedAt.push(0);
  }

  /** The number of a part; -1 for one that no rule and no supersession names: all such parts are judged alike. */
  partIndex(part: PartKey): number {
    return this.partNumbers.get(part) ?? -1;
  }

  /** The slot of a unit and position by today's papers. Facts that the rules never ask for make no other slot. */
  slotOf(facts: SlotFacts, position: string): number {
    return this.slotIn(this.history.book(facts.line, position), facts, this.today);
  }

  /** The slot shared by every unit of the line, or -1 when rules ask for the model, an option or the serial. */
  plainSlotOf(line: string, position: string): number {
    const book = this.history.book(line, position);
    return book.isPlain ? this.slotIn(book, { line, model: null, options: {}, serial: null }, this.today) : -1;
  }

  /** One verdict. `part` is a part index; the build dates run from `builtFrom` up to, not including, `builtTo`. */
  verdictCode(slot: number, part: number, builtFrom: number, builtTo: number, fittedOn: number): number {
    const bits = this.bits(slot, part, builtFrom, builtTo);
    if (bits !== NO) return CODE_OF_BITS[bits]!;
    return this.late(this.thenBits(slot, part, builtFrom, builtTo, fittedOn));
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

  /** Judges rows 0 up to `count` into `codes`. */
  judgeColumns(rows: InstallColumns, count: number, codes: Uint8Array): void {
    const { slot, part, builtFrom, builtTo, fittedOn } = rows;
    for (let i = 0; i < count; i++) {
      codes[i] = this.verdictCode(slot[i]!, part[i]!, builtFrom[i]!, builtTo[i]!, fittedOn[i]!);
    }
  }

  private codeOverSet(slot: number, part: number, built: DaySet, fittedOn: number): number {
    let bits = 0;
    for (const { from, to } of built) bits |= this.bits(slot, part, columnDay(from), columnDay(to));
    if (bits !== NO) return CODE_OF_BITS[bits]!;
    let then = 0;
    for (const { from, to } of built) then |= this.thenBits(slot, part, columnDay(from), columnDay(to), fittedOn);
    return this.late(then);
  }

  private late(thenBits: number): number {
    return CODE_OF_BITS[thenBits]! <= ALLOWED_CODE ? OUTDATED_CODE : WRONG_CODE;
  }

  private bits(slot: number, part: number, from: number, to: number): number {
    if (from >= to) return 0;
    const cuts = this.cuts.values;
    const end = this.slotAt.values[slot + 1]!;
    let low = this.slotAt.values[slot]!;
    let high = end - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (cuts[middle]! <= from) low = middle;
      else high = middle - 1;
    }
    let bits = this.segmentBits(low, part);
    while (++low < end && cuts[low]! < to) bits |= this.segmentBits(low, part);
    return bits;
  }

  private segmentBits(segment: number, part: number): number {
    const named = this.namedPart.values;
    const end = this.namedAt.values[segment + 1]!;
    for (let i = this.namedAt.values[segment]!; i < end; i++) if (named[i] === part) return this.namedBits.values[i]!;
    return this.others.values[segment]!;
  }

  /** By the papers of the fitting day; of each build day, stretch by stretch, when it came with the unit. */
  private thenBits(slot: number, part: number, from: number, to: number, fittedOn: number): number {
    const { book } = this.slots[slot]!;
    const cuts = book.inForceCuts;
    if (fittedOn !== CAME_WITH_UNIT)
      return this.bits(this.thenSlot(slot, lastAtOrBefore(cuts, fittedOn)), part, from, to);
    let bits = 0;
    for (let i = lastAtOrBefore(cuts, from); i < cuts.length && columnDay(cuts[i]!) < to; i++) {
      const last = i + 1 < cuts.length ? Math.min(to, cuts[i + 1]!) : to;
      bits |= this.bits(this.thenSlot(slot, i), part, Math.max(from, columnDay(cuts[i]!)), last);
    }
    return bits;
  }

  private thenSlot(slot: number, stretch: number): number {
    const one = this.slots[slot]!;
    one.then ??= new Int32Array(one.book.inForceCuts.length).fill(-1);
    if (one.then[stretch] === -1) one.then[stretch] = this.slotIn(one.book, one.facts, one.book.inForceCuts[stretch]!);
    return one.then[stretch]!;
  }

  private slotIn(book: PositionBook, facts: SlotFacts, inForceOn: Day): number {
    let slots = this.slotByKey.get(book);
    if (!slots) this.slotByKey.set(book, (slots = new Map()));
    const key = `${lastAtOrBefore(book.inForceCuts, inForceOn)} ${book.factsKey(facts)}`;
    let slot = slots.get(key);
    if (slot === undefined) slots.set(key, (slot = this.addSlot(book, facts, inForceOn)));
    return slot;
  }

  private addSlot(book: PositionBook, facts: SlotFacts, inForceOn: Day): number {
    const { graph } = this.history;
    const variants = book.variantsOf(facts, inForceOn, this.now);
    for (const { from, others, named } of segmentsOf(variants, graph, this.now)) {
      this.cuts.push(columnDay(from));
      this.others.push(others);
      for (const [part, bits] of named) {
        this.namedPart.push(this.partNumbers.get(part)!);
        this.namedBits.push(bits);
      }
      this.namedAt.push(this.namedPart.length);
    }
    this.slotAt.push(this.cuts.length);
    this.slots.push({ book, facts, then: null });
    return this.slots.length - 1;
  }
}
