import type { DaySet } from '../day';
import { cutsOf } from './position-table';
import { lastAtOrBefore, type PositionBook, type RulebookHistory } from './rulebook-history';
import type { PartQuestion } from './verdict';

/**
 * Sorts questions into classes that are judged alike: the same verdict for the same reasons in the same words. Only what
 * repeats the question (the unit, and the build days to which a piece is cut) differs within one. There are as many as
 * the rules make, however many units there are.
 */
export class QuestionClasses {
  private readonly cells = new Map<PositionBook, readonly number[]>();

  constructor(private readonly history: RulebookHistory) {}

  /** The class as a text; it tells nothing by itself. */
  of({ unit, position, parts, fittedOn }: PartQuestion): string {
    const book = this.history.book(unit.line, position);
    const alike = book.classes.of(unit);
    return JSON.stringify([unit.line, position, alike, this.builtWithin(book, unit.built), fittedOn, ...parts]);
  }

  /** The cell between two neighbouring cuts where all possible days lie in one; otherwise the days themselves. */
  private builtWithin(book: PositionBook, built: DaySet): number | string {
    const [only, ...others] = built;
    if (only !== undefined && others.length === 0) {
      const cuts = this.cutsOf(book);
      const cell = lastAtOrBefore(cuts, only.from);
      if (only.to <= (cuts[cell + 1] ?? Infinity)) return cell;
    }
    return built.map(({ from, to }) => `${from} ${to}`).join(' ');
  }

  /** Days at which a rule of any time may begin or end to speak; what came with the unit is judged by its build day. */
  private cutsOf(book: PositionBook): readonly number[] {
    let cuts = this.cells.get(book);
    if (!cuts) {
      cuts = cutsOf(book.rules.flatMap(({ rule }) => [rule.built, rule.inForce]));
      this.cells.set(book, cuts);
    }
    return cuts;
  }
}
