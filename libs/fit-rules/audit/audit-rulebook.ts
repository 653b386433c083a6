import type { PartKey, SupersessionGraph } from '../../part-number';
import type { Rulebook, RuleRef } from '../fit-rule';
import { filledNaming, type FullNaming, type Naming } from '../naming';
import type { PreparedRule } from '../prepared-rule';
import { RulebookHistory } from '../rulebook-history';
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
  const decided = new Set<RuleRef>();
  const findings: Finding[] = [];
  for (const line of context.lines) {
    const checks = checksFor(line, context, history.graph);
    for (const position of line.positions) {
      const courses = coursesOf(history.passingBook(line.line, position), line, context);
      noteDeciders(courses, decided);
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

function noteDeciders(courses: readonly Course[], decided: Set<RuleRef>): void {
  for (const { stretches } of courses) {
    for (const { weighed } of stretches) for (const ref of weighed.deciding) decided.add(ref);
  }
}

/** Rules of the lines looked at that require or allow something, are in force and known, and decide nowhere. */
function neverDeciding(
  rules: readonly PreparedRule[],
  { lines, inForceOn, knownAt }: AuditContext,
  decided: ReadonlySet<RuleRef>,
): readonly RuleFinding[] {
  const names = new Set(lines.map(({ line }) => line));
  return rules
    .filter(({ ref, decides }) => decides && !decided.has(ref))
    .filter(({ rule: { line, known, inForce } }) => {
      const speaks = known.from <= knownAt && knownAt < known.to && inForce.from <= inForceOn && inForceOn < inForce.to;
      return speaks && names.has(line);
    })
    .map(({ rule }) => foundInRule('never-decides', rule, [], ''));
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
