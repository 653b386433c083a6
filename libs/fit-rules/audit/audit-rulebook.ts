import type { PartKey, SupersessionGraph } from '../../part-number';
import type { Rulebook, RuleRef } from '../fit-rule';
import { filledNaming, type FullNaming, type Naming } from '../naming';
import { RulebookHistory } from '../rulebook-history';
import { coursesOf, type Course } from './courses';
import { findingSeverities, type AuditContext, type AuditLine, type Finding } from './finding';
import { placeFindings, type PlaceChecks } from './place-findings';
import { partFindings, ruleFindings } from './rule-findings';
import { mendOfCode, sayFinding, severityOfCode, type SaidFinding } from './say-finding';

/**
 * Looks over the whole rulebook, by the papers of one day as known at one instant. Complete: every position of every
 * line is swept over every boundary of its production span, for every model, serial and option the rules can tell
 * apart; nothing is sampled. Worst findings first, then by line, position and build date.
 */
export function auditRulebook(rulebook: Rulebook, context: AuditContext, naming?: Naming): readonly Finding[] {
  const names = filledNaming(naming);
  const history = new RulebookHistory(rulebook);
  const decided = new Set<string>();
  const findings: Finding[] = [];
  for (const line of context.lines) {
    const checks = checksFor(line, context, history.graph);
    for (const position of line.positions) {
      const courses = coursesOf(history.book(line.line, position), line, context);
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
    ...neverDeciding(rulebook, context, decided),
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

function noteDeciders(courses: readonly Course[], decided: Set<string>): void {
  for (const { stretches } of courses) {
    for (const { weighed } of stretches) for (const ref of weighed.deciding) decided.add(refText(ref));
  }
}

/** Rules of the lines looked at that require or allow something, are in force and known, and decide nowhere. */
function neverDeciding(rulebook: Rulebook, context: AuditContext, decided: ReadonlySet<string>) {
  const lines = new Set(context.lines.map(({ line }) => line));
  const { inForceOn, knownAt } = context;
  return rulebook.rules
    .filter(({ line, required, allowed }) => lines.has(line) && (required !== null || allowed.length > 0))
    .filter(({ known }) => known.from <= knownAt && knownAt < known.to)
    .filter(({ inForce }) => inForce.from <= inForceOn && inForceOn < inForce.to)
    .filter((rule) => !decided.has(refText(rule)))
    .map(({ key, version, line, positions }) => ({
      code: 'never-decides' as const,
      line,
      position: positions.length === 1 ? positions[0]! : null,
      rules: [{ key, version }],
      parts: [],
      detail: '',
    }));
}

function finish(said: SaidFinding, example: Finding['example'], naming: FullNaming): Finding {
  const { code, line, position, where, rules, parts } = said;
  const words = { sentence: sayFinding(said, naming), mend: mendOfCode[code] };
  return { code, severity: severityOfCode[code], line, position, where, rules, parts, example, ...words };
}

function refText({ key, version }: RuleRef): string {
  return `${key}\n${version}`;
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
