import type { RuleView } from '../../contracts';
import { saySpan } from '../../day';
import { sayBarReason, saySerials, type Action, type FitRule, type Naming } from '../../fit-rules';

const ACTION_WORDS: Record<Action, string> = {
  nothing: '',
  'next-service': ' Units already out: at next service.',
  'call-back': ' Units already out: call back.',
  'stop-use': ' Units already out: stop use and call back.',
};

/** How a rule's line, positions and parts are called. */
type Names = Pick<Required<Naming>, 'line' | 'part' | 'position'>;

/** A rule as a reader of the bulletin sees it: sentence and parts in names and printed numbers, the rest by its codes. */
export function ruleView(rule: FitRule, names: Names): RuleView {
  const { key, version, line, positions, models, options, action, replaces } = rule;
  return {
    ...{ key, version, line, action },
    positions: [...positions],
    models: [...models],
    options: options.map(({ option, fitted }) => (fitted ? option : `without ${option}`)),
    built: saySpan(rule.built),
    serials: rule.serials && saySerials(rule.serials),
    inForce: saySpan(rule.inForce),
    required: rule.required && names.part(rule.required),
    allowed: rule.allowed.map(names.part),
    barred: rule.barred.map((bar) => ({ part: names.part(bar.part), reason: sayBarReason(bar) })),
    replaces: [...replaces],
    sentence: sayRule(rule, names),
  };
}

function sayRule(rule: FitRule, names: Names): string {
  const { line, positions, required, allowed, barred, action } = rule;
  const says = [
    required === null ? '' : `${names.part(required)} is required`,
    allowed.length === 0 ? '' : `${allowed.map(names.part).join(', ')} may be fitted${required === null ? '' : ' too'}`,
    barred.length === 0 ? '' : `${barred.map((bar) => names.part(bar.part)).join(', ')} must not be fitted`,
  ].filter((text) => text !== '');
  const what = says.length === 0 ? 'an earlier rule no longer holds' : says.join('; ');
  const places = positions.map((position) => names.position(position, line)).join(', ');
  return `${names.line(line)}, ${places}, ${sayUnitsOf(rule)}: ${what}.${ACTION_WORDS[action]}`;
}

function sayUnitsOf({ built, models, serials, options }: FitRule): string {
  const units = [`built ${saySpan(built)}`];
  if (models.length > 0) units.push(`model ${models.join(' or ')}`);
  if (serials !== null) units.push(saySerials(serials));
  for (const { option, fitted } of options) units.push(`${fitted ? 'with' : 'without'} ${option}`);
  return units.join(', ');
}
