import { sayDay } from '../../day';
import { listed, type FullNaming } from '../naming';
import type { PieceWhere } from '../ruling';
import type { RuleRef } from '../fit-rule';
import { sayPlace } from '../say-ruling';
import type { FindingCode, FindingSeverity } from './finding';
import type { PartKey } from '../../part-number';

/** What every finding of a kind weighs. */
export const severityOfCode: Readonly<Record<FindingCode, FindingSeverity>> = {
  gap: 'warning',
  disputed: 'error',
  'required-and-barred': 'error',
  'never-decides': 'note',
  'dead-part': 'error',
  'unknown-part': 'error',
  'supersession-cycle': 'error',
  'supersession-fork': 'warning',
  'dead-and-replaced': 'warning',
  'empty-span': 'error',
  'bar-names-no-other': 'warning',
  'withdrawn-source': 'error',
  'missing-source': 'error',
  'replaces-nothing': 'warning',
  'untellable-boundary': 'warning',
};

/** What would mend a finding of each kind. */
export const mendOfCode: Readonly<Record<FindingCode, string>> = {
  gap: 'Enter what the maker says for these units, or note that the position is not used on them.',
  disputed: 'Ask the maker which paper holds, and let one of the rules take the place of the other.',
  'required-and-barred': 'Ask the maker: either the part is no longer required, or the bar does not hold here.',
  'never-decides':
    'Nothing, if newer papers have overtaken it; else look at its spans and at what it is weighed against.',
  'dead-part': 'Ask the maker what is fitted in its place, and enter that as a supersession or a rule.',
  'unknown-part': 'Enter the part in the catalogue, or mend the number in the rule.',
  'supersession-cycle': 'One of these steps points the wrong way: look at the papers and take it out.',
  'supersession-fork': 'Say in rules which of the parts belongs to which units.',
  'dead-and-replaced': 'Take out the one of the two that no longer holds.',
  'empty-span': 'Mend the span: it must end after it begins, the end itself not included.',
  'bar-names-no-other': 'Enter what the paper, or the paper before it, has fitted instead.',
  'withdrawn-source': 'Withdraw the rule too, or rest it on another paper.',
  'missing-source': 'Enter the paper the rule rests on.',
  'replaces-nothing': 'Mend the key of the rule that is replaced.',
  'untellable-boundary': 'Ask the maker for the serial at which the change was made, and enter it as a serial span.',
};

export interface SaidFinding {
  readonly code: FindingCode;
  readonly line: string | null;
  readonly position: string | null;
  readonly where: PieceWhere | null;
  readonly rules: readonly RuleRef[];
  readonly parts: readonly PartKey[];
  readonly detail: string;
}

/** A finding in one sentence, with its place first. */
export function sayFinding(finding: SaidFinding, naming: FullNaming): string {
  const { line, position, where } = finding;
  const place = line === null ? [] : [naming.line(line)];
  if (line !== null && position !== null) place.push(naming.position(position, line));
  const units = where === null ? [] : [sayPlace(where)];
  const lead = [...place, ...units.slice(0, finding.code === 'untellable-boundary' ? 0 : 1)].join(', ');
  return lead === '' ? body(finding, naming) : `${lead}: ${body(finding, naming)}`;
}

function body({ code, line, rules, parts, detail, where }: SaidFinding, naming: FullNaming): string {
  const named = listed(parts.map(naming.part));
  const by = listed(rules.map((rule) => sayRuleAndPaper(rule, naming)));
  switch (code) {
    case 'gap':
      return 'no rule says what belongs here.';
    case 'disputed':
      return `${by} stand equal and say different things about ${named}.`;
    case 'required-and-barred':
      return `${named} is both required and barred (${by}).`;
    case 'never-decides':
      return `${by} decides for no unit.`;
    case 'dead-part':
      return `${named} is required by ${by}, is dead, and nothing may replace it.`;
    case 'unknown-part':
      return `${named} is required by ${by} and is in no catalogue.`;
    case 'supersession-cycle':
      return `${named} give way to one another in a ring.`;
    case 'supersession-fork':
      return `${naming.part(parts[0]!)} gives way to ${listed(parts.slice(1).map(naming.part))}, and nothing says to which.`;
    case 'dead-and-replaced':
      return `${naming.part(parts[0]!)} is said to be dead and to give way to ${listed(parts.slice(1).map(naming.part))}.`;
    case 'empty-span':
      return `the ${detail} of ${by} ends before it begins.`;
    case 'bar-names-no-other':
      return `${by} bars ${named}, and its paper names no part to fit instead (${sayPositions(detail, line, naming)}).`;
    case 'withdrawn-source':
      return `rule ${rules[0]!.key} rests on ${paperOf(rules[0]!, naming) ?? detail}, which has been withdrawn.`;
    case 'missing-source':
      return `${by} rests on ${detail}, which is not there.`;
    case 'replaces-nothing':
      return `${by} takes the place of rule ${detail}, which has never been.`;
    case 'untellable-boundary':
      return `the answer changes for units built from ${sayDay(where!.built[0]!.from)} on, and no evidence can tell that day from the day before.`;
  }
}

/** The rule by its key, with its paper where the naming knows one. */
function sayRuleAndPaper(rule: RuleRef, naming: FullNaming): string {
  const paper = paperOf(rule, naming);
  return paper === null ? `rule ${rule.key}` : `rule ${rule.key} (${paper})`;
}

/** Null where the naming knows no more of the rule than its key. */
function paperOf(rule: RuleRef, naming: FullNaming): string | null {
  const said = naming.rule(rule);
  return said === `rule ${rule.key}` ? null : said;
}

function sayPositions(codes: string, line: string | null, naming: FullNaming): string {
  return listed(codes.split(', ').map((code) => (line === null ? code : naming.position(code, line))));
}
