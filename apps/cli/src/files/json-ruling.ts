import { formatDay, type DaySet, type DaySpan } from '../../../../libs/day';
import {
  sayBoundary,
  sayRuling,
  type Boundary,
  type FullNaming,
  type Judgement,
  type Outcome,
  type PieceWhere,
  type Ruling,
  type RulingPiece,
} from '../../../../libs/fit-rules';

/** A ruling as JSON: days as text, spans closed-open with null for an open side. */
export function jsonRuling(ruling: Ruling, naming: FullNaming) {
  return {
    position: ruling.position,
    inForceOn: formatDay(ruling.inForceOn),
    knownAt: new Date(ruling.knownAt).toISOString(),
    settled: ruling.settled,
    says: sayRuling(ruling, naming),
    pieces: ruling.pieces.map(jsonPiece),
    boundaries: ruling.boundaries.map((one) => ({ ...jsonBoundary(one), says: sayBoundary(one) })),
    notNeeded: ruling.notNeeded,
  };
}

/** A judgement as JSON, its ruling included. */
export function jsonJudgement(judgement: Judgement, naming: FullNaming) {
  const { question, verdict, candidates, couldHaveKnown, deciding, bars, action, ruling } = judgement;
  return {
    position: question.position,
    parts: question.parts,
    fittedOn: question.fittedOn === null ? null : formatDay(question.fittedOn),
    verdict,
    action,
    couldHaveKnown,
    deciding,
    bars,
    candidates: candidates.map(({ part, verdict: own, then, thenAsKnown, pieces }) => ({
      part,
      verdict: own,
      then,
      thenAsKnown,
      pieces: pieces.map((piece) => ({ ...piece, where: jsonWhere(piece.where) })),
    })),
    ruling: jsonRuling(ruling, naming),
  };
}

/** A set of days as JSON. */
export function jsonDays(days: DaySet) {
  return days.map(jsonSpan);
}

function jsonSpan({ from, to }: DaySpan) {
  return { from: from === -Infinity ? null : formatDay(from), to: to === Infinity ? null : formatDay(to) };
}

function jsonWhere({ built, model, serial, options }: PieceWhere) {
  return { built: jsonDays(built), model, serial, options };
}

function jsonPiece({ where, outcome, grounds }: RulingPiece) {
  return {
    where: jsonWhere(where),
    outcome: jsonOutcome(outcome),
    grounds: grounds.map(({ built, ...weighed }) => ({ built: jsonSpan(built), ...weighed })),
  };
}

function jsonOutcome(outcome: Outcome) {
  return outcome.kind === 'decided'
    ? { kind: outcome.kind, required: outcome.saying.required, allowed: outcome.saying.allowed, barred: outcome.barred }
    : outcome;
}

function jsonBoundary(boundary: Boundary) {
  return boundary.axis === 'built'
    ? { axis: boundary.axis, at: formatDay(boundary.at), after: formatDay(boundary.after) }
    : boundary;
}
