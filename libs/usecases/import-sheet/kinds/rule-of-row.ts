import type { FitRuleFile } from '../../../fit-rules';
import type { CellProblem, RuleSheetRow } from '../../../sheets';
import { alike, problem } from '../kind-work';
import type { TicketParts } from './ticket-parts';

/** What a row says of a rule; what it leaves out is settled where the draft is checked. */
export type RuleOfRow = Omit<FitRuleFile, 'version' | 'source' | 'known' | 'inForce'> &
  Partial<Pick<FitRuleFile, 'inForce'>>;

/** A rule from a row, its parts read as the line's maker writes them; or which part cannot be read. */
export function ruleOfRow(row: RuleSheetRow, parts: TicketParts): RuleOfRow | CellProblem {
  const problems: CellProblem[] = [];
  const key = (field: string, text: string): string => {
    const chosen = parts.read(text, row.line);
    if (chosen.ok) return chosen.part.key;
    problems.push(problem(field, 'not-accepted', chosen.sentence));
    return '';
  };
  const { builtFrom, builtUntil, scheme, serialFrom, serialUntil, inForceFrom, inForceUntil } = row;
  const rule: RuleOfRow = {
    key: row.key,
    line: row.line,
    models: [...(row.models ?? [])],
    options: (row.options ?? []).map(({ option, fitted }) => ({ option, fitted })),
    positions: [...row.positions],
    built: { from: builtFrom ?? null, to: builtUntil ?? null },
    serials: scheme ? { scheme, from: serialFrom ?? null, to: serialUntil ?? null } : null,
    required: row.required ? key('required', row.required) : null,
    allowed: (row.allowed ?? []).map((one) => key('allowed', one)),
    barred: (row.barred ?? []).map((bar) => ({ ...bar, part: key('barred', bar.part) })),
    action: row.action ?? 'nothing',
    replaces: [...(row.replaces ?? [])],
    ...(inForceFrom || inForceUntil
      ? { inForce: { from: inForceFrom ?? row.effective ?? row.issued, to: inForceUntil ?? null } }
      : {}),
  };
  return problems[0] ?? rule;
}

/** True when a rule on file says what the row does; `on` is the day from which its paper is in force. */
export function sameRules(kept: FitRuleFile, row: RuleOfRow, on: string): boolean {
  const { version: _version, source: _source, known: _known, ...rule } = kept;
  return alike(rule, { inForce: { from: on, to: null }, ...row });
}
