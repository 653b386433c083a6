import type { PartRef, RulingPiece as PieceView, RulingView } from '../../contracts';
import { formatDay, type DaySet } from '../../day';
import {
  sayBarReason,
  sayBoundary,
  sayRuling,
  saySerials,
  type HeldBar,
  type LostBecause,
  type PieceWhere,
  type Ruling,
  type RulingPiece,
  type Source,
} from '../../fit-rules';
import { namingOf, sourceOfRule, type Names } from './naming-of';
import { partRefOf } from './part-ref';

/** A ruling for the page. */
export function rulingView(ruling: Ruling, names: Names): RulingView {
  const naming = namingOf(names);
  return {
    position: ruling.position,
    settled: ruling.settled,
    sentence: sayRuling(ruling, naming).join(' '),
    pieces: ruling.pieces.map((piece) => pieceView(piece, names)),
    boundaries: ruling.boundaries.flatMap((one) => (one.axis === 'built' ? [formatDay(one.at)] : [])),
    dependsOn: ruling.boundaries.map(sayBoundary),
  };
}

export function sourceRef({ key, kind, number, title, issued }: Source) {
  return { key, kind, number, title, issued: formatDay(issued) };
}

/** Spans for the page; an open side is null. */
export function openSpans(days: DaySet): { from: string | null; to: string | null }[] {
  const side = (value: number) => (Number.isFinite(value) ? formatDay(value) : null);
  return days.map(({ from, to }) => ({ from: side(from), to: side(to) }));
}

function pieceView(piece: RulingPiece, names: Names): PieceView {
  const { outcome, grounds } = piece;
  const deciding = grounds.flatMap((ground) => ground.deciding);
  const first = deciding[0];
  const source = first ? sourceOfRule(names.rulebook, first) : null;
  return {
    built: openSpans(piece.where.built),
    when: conditionsOf(piece.where),
    outcome: outcome.kind,
    required: outcome.kind === 'decided' ? refOrNull(outcome.saying.required, names) : null,
    allowed: allowedParts(outcome, names),
    barred: outcome.barred.map((bar) => barView(bar, names)),
    rule: first?.key ?? null,
    source: source && sourceRef(source),
    overridden: overriddenRules(grounds, names),
  };
}

/** Where the papers disagree, every part that one of them requires or allows is shown. */
function allowedParts(outcome: RulingPiece['outcome'], names: Names): PartRef[] {
  if (outcome.kind === 'nothing-said') return [];
  const keys =
    outcome.kind === 'decided'
      ? outcome.saying.allowed
      : outcome.sayings.flatMap(({ required, allowed }) => (required === null ? allowed : [required, ...allowed]));
  return [...new Set(keys)].map((key) => partRefOf(key, names.partsByKey));
}

function barView(bar: HeldBar, names: Names) {
  return {
    part: partRefOf(bar.part, names.partsByKey),
    reason: sayBarReason(bar),
    rule: bar.rule.key,
    source: namingOf(names).rule(bar.rule),
    voidsWarranty: bar.voidsWarranty === true,
  };
}

function overriddenRules(grounds: RulingPiece['grounds'], names: Names): PieceView['overridden'] {
  const naming = namingOf(names);
  const seen = new Set<string>();
  return grounds
    .flatMap((ground) => ground.overridden)
    .filter(({ rule }) => !seen.has(rule.key) && seen.add(rule.key))
    .map(({ rule, because }) => {
      const source = sourceOfRule(names.rulebook, rule);
      return { rule: rule.key, source: source && sourceRef(source), why: sayLost(because, naming) };
    });
}

function sayLost(because: LostBecause, { rule }: ReturnType<typeof namingOf>): string {
  switch (because.code) {
    case 'replaced':
      return `replaced by ${rule(because.by)}`;
    case 'lower-standing':
      return `counts less than ${rule(because.than)}`;
    case 'issued-earlier':
      return `issued before ${rule(because.than)}`;
    case 'only-bars':
      return 'only bars parts, and so does not decide';
  }
}

function conditionsOf({ model, serial, options }: PieceWhere): string[] {
  const words: string[] = [];
  if (model !== null) words.push(model === 'another-model' ? 'another model' : `model ${model.only}`);
  if (serial === 'another-scheme') words.push('no serial of the schemes named');
  else if (serial !== null) words.push(saySerials(serial));
  return [...words, ...options.map(({ option, fitted }) => (fitted ? `with ${option}` : `without ${option}`))];
}

function refOrNull(key: string | null, names: Names): PartRef | null {
  return key === null ? null : partRefOf(key, names.partsByKey);
}
