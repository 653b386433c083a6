import type { PartKey, SupersessionGraph } from '../../part-number';
import type { FitRule, Rulebook, RuleRef } from '../fit-rule';
import { filledNaming, type FullNaming, type Naming } from '../naming';
import { RulebookHistory, type PositionBook } from '../rulebook-history';
import { coursesOf, type Course } from './courses';
import { findingSeverities, type AuditContext, type AuditLine, type Finding } from './finding';
import { placeFindings, type PlaceChecks } from './place-findings';
import { foundInRule, partFindings, ruleFindings, type RuleFinding } from './rule-findings';
import { mendOfCode, sayFinding, severityOfCode, type SaidFinding } from './say-finding';

/**
 * Looks over the whole rulebook, by the papers of one day as known at one instant. Complete: every position of every
 * line is swept over every boundary of its production span, for every model, serial and option the rules can tell
 * apart; nothing is sampled. Worst findings first, then by line, position and build date.
 */
export function auditRulebook(rulebook: Rulebook, context: AuditContext, naming?: Naming): readonly Finding[] {
  const names = filledNaming(naming);
  const history = new RulebookHistory(rulebook);
  const decided = new Set<FitRule>();
  const findings: Finding[] = [];
  for (const line of context.lines) {
    const checks = checksFor(line, context, history.graph);
    for (const position of line.positions) {
      const book = history.passingBook(line.line, position);
      const courses = coursesOf(book, line, context);
      noteDeciders(book, courses, decided);
      for (const one of placeFindings(courses, checks)) {
        const said: SaidFinding = { ...one, line: line.line, position, detail: '' };
        findings.push(finish(said, one.example, names));
      }
    }
  }
  const others = [
    ...ruleFindings(rulebook, context),
    ...partFindings(rulebook.supersessions, context.knownAt),
    ...neverDeciding(history.rules, context, decided),
  ];
  findings.push(...others.map((one) => finish({ ...one, where: null }, null, names)));
  return findings.sort(inOrder);
}

function checksFor(line: AuditLine, context: AuditContext, graph: SupersessionGraph): PlaceChecks {
  const { catalogue, knownAt, canTellApart } = context;
  return {
    partProblem: (part: PartKey) => {
      if (catalogue !== null && !catalogue.has(part)) return 'unknown-part';
      return graph.isDead(part, knownAt) ? 'dead-part' : null;
    },
    canTellApart: canTellApart ? (boundary) => canTellApart(line.line, boundary) : null,
  };
}

function noteDeciders(book: PositionBook, courses: readonly Course[], decided: Set<FitRule>): void {
  const here = new Set<RuleRef>();
  for (const { stretches } of courses) {
    for (const { weighed } of stretches) for (const ref of weighed.deciding) here.add(ref);
  }
  for (const { rule, ref } of book.rules) if (here.has(ref)) decided.add(rule);
}

/** Rules of the lines looked at that require or allow something, are in force and known, and decide nowhere. */
function neverDeciding(
  rules: readonly FitRule[],
  { lines, inForceOn, knownAt }: AuditContext,
  decided: ReadonlySet<FitRule>,
): readonly RuleFinding[] {
  const names = new Set(lines.map(({ line }) => line));
  return rules
    .filter((rule) => !decided.has(rule) && (rule.required !== null || rule.allowed.length > 0))
    .filter(({ line, known, inForce }) => {
      const speaks = known.from <= knownAt && knownAt < known.to && inForce.from <= inForceOn && inForceOn < inForce.to;
      return speaks && names.has(line);
    })
    .map((rule) => foundInRule('never-decides', rule, [], ''));
}

function finish(said: SaidFinding, example: Finding['example'], naming: FullNaming): Finding {
  const { code, line, position, where, rules, parts } = said;
  const words = { sentence: sayFinding(said, naming), mend: mendOfCode[code] };
  return { code, severity: severityOfCode[code], line, position, where, rules, parts, example, ...words };
}

function inOrder(a: Finding, b: Finding): number {
  const rank = findingSeverities.indexOf(a.severity) - findingSeverities.indexOf(b.severity);
  return (
    rank ||
    compare(a.line ?? '', b.line ?? '') ||
    compare(a.position ?? '', b.position ?? '') ||
    byBuilt(a, b) ||
    compare(a.sentence, b.sentence)
  );
}

function byBuilt(a: Finding, b: Finding): number {
  return compare(a.where?.built[0]?.from ?? -Infinity, b.where?.built[0]?.from ?? -Infinity);
}

function compare<T extends string | number>(a: T, b: T): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
