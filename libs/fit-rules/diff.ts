import { ALL_DAYS, type Day } from '../day';
import type { Rulebook } from './fit-rule';
import { meetOfWhere, namedBeside } from './meet-where';
import { byText } from './prepared-rule';
import type { Outcome, PieceWhere, Ruling } from './ruling';
import { compileRulebook, rulingFor, type CompiledRulebook } from './ruling-for';
import { outcomeKey } from './weigh';

/** Units for which the answer is another one before and after. */
export interface AnswerChange {
  readonly where: PieceWhere;
  readonly before: Outcome;
  readonly after: Outcome;
}

/** The same, with the place it is about. */
export interface PlaceChange extends AnswerChange {
  readonly line: string;
  readonly position: string;
}

/** A rulebook, and by which papers and which knowledge it is to be read. */
export interface RulebookAt {
  readonly rulebook: Rulebook;
  readonly inForceOn: Day;
  readonly knownAt: number;
}

/** Where two rulings on one unit and position differ. Pieces cut in other ways are compared where they meet. */
export function diffRulings(before: Ruling, after: Ruling): readonly AnswerChange[] {
  const [besideOld, besideYoung] = [namedBeside(before.pieces), namedBeside(after.pieces)];
  return before.pieces.flatMap((old) =>
    after.pieces.flatMap((young) => {
      if (outcomeKey(old.outcome) === outcomeKey(young.outcome)) return [];
      const where = meetOfWhere(old.where, young.where, besideOld, besideYoung);
      return where === null ? [] : [{ where, before: old.outcome, after: young.outcome }];
    }),
  );
}

/**
 * Where two rulebooks, or one rulebook by other papers or other knowledge, give another answer: for every line and
 * position that either speaks of, over every build date, model, serial and option.
 */
export function diffRulebooks(before: RulebookAt, after: RulebookAt): readonly PlaceChange[] {
  const [old, young] = [compileRulebook(before.rulebook, before), compileRulebook(after.rulebook, after)];
  const places = new Map<string, { line: string; position: string }>();
  for (const { line, positions } of [...before.rulebook.rules, ...after.rulebook.rules]) {
    for (const position of positions) places.set(JSON.stringify([line, position]), { line, position });
  }
  return [...places.keys()].sort(byText).flatMap((key) => {
    const place = places.get(key)!;
    return diffRulings(wholeRuling(old, place), wholeRuling(young, place)).map((change) => ({ ...place, ...change }));
  });
}

/** The ruling for a unit of which nothing is known but its line. */
function wholeRuling(compiled: CompiledRulebook, { line, position }: { line: string; position: string }): Ruling {
  return rulingFor(compiled, { line, model: null, options: {}, serial: null, built: [ALL_DAYS] }, position);
}
