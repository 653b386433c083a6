import { ALL_DAYS, unionOf } from '../day';
import type { PartKey } from '../part-number';
import type { RuleRef } from './fit-rule';
import type { Judge } from './judge';
import { meetOfWhere, namedBeside } from './meet-where';
import type { HeldBar, PieceWhere } from './ruling';
import type { JudgedPiece } from './verdict';

/** One part in one position of a line. */
export interface PartPlace {
  readonly line: string;
  readonly position: string;
  readonly part: PartKey;
}

/** Units for which a part is no longer right, or is newly barred, once the rulebook has changed. */
export interface PartLoss {
  readonly where: readonly PieceWhere[];
  /** The new bars on the part; none where it merely is no longer required or allowed. */
  readonly bars: readonly HeldBar[];
}

/**
 * Where a part loses its place from one rulebook to the next, over every unit of the line: what was required or allowed
 * and is so no more, and what a rule that `isNew` bars. Null where nothing is lost.
 */
export function partLoss(
  before: Judge,
  after: Judge,
  place: PartPlace,
  isNew: (rule: RuleRef) => boolean,
): PartLoss | null {
  const [old, young] = [piecesOf(before, place), piecesOf(after, place)];
  const [besideOld, besideYoung] = [namedBeside(old), namedBeside(young)];
  const where: PieceWhere[] = [];
  const bars: HeldBar[] = [];
  for (const piece of young) {
    if (isGood(piece)) continue;
    const newBars = piece.bars.filter(({ rule }) => isNew(rule));
    bars.push(...newBars);
    if (newBars.length > 0) where.push(piece.where);
    else
      where.push(
        ...old.filter(isGood).flatMap((one) => meetOfWhere(one.where, piece.where, besideOld, besideYoung) ?? []),
      );
  }
  return where.length === 0 ? null : { where: joined(where), bars };
}

/** For which units the part is required or allowed. */
export function whereGood(judge: Judge, place: PartPlace): readonly PieceWhere[] {
  return joined(
    piecesOf(judge, place)
      .filter(isGood)
      .map((piece) => piece.where),
  );
}

function piecesOf(judge: Judge, { line, position, part }: PartPlace): readonly JudgedPiece[] {
  const unit = { line, model: null, options: {}, serial: null, built: [ALL_DAYS] };
  return judge.judge({ unit, position, parts: [part], fittedOn: null }).candidates[0]!.pieces;
}

function isGood({ outcome }: JudgedPiece): boolean {
  return outcome === 'required' || outcome === 'allowed';
}

/** Pieces that differ in their build dates alone are one. */
function joined(all: readonly PieceWhere[]): readonly PieceWhere[] {
  const byRest = new Map<string, PieceWhere>();
  for (const where of all) {
    const { built, ...rest } = where;
    const key = JSON.stringify(rest);
    const known = byRest.get(key);
    byRest.set(key, known ? { ...known, built: unionOf(known.built, built) } : where);
  }
  return [...byRest.values()];
}
