import type { RuleView } from '../../contracts';
import { saySpan } from '../../day';
import { sayBarReason, saySerials, type Action, type FitRule } from '../../fit-rules';
import { splitPartKey } from '../../part-number';

const ACTION_WORDS: Record<Action, string> = {
  nothing: '',
  'next-service': ' Units already out: at next service.',
  'call-back': ' Units already out: call back.',
  'stop-use': ' Units already out: stop use and call back.',
};

/** A rule as a reader of the bulletin sees it. */
export function ruleView(rule: FitRule): RuleView {
  const { key, version, line, positions, models, options, action, replaces } = rule;
  return {
    ...{ key, version, line, action },
    positions: [...positions],
    models: [...models],
    options: options.map(({ option, fitted }) => (fitted ? option : `without ${option}`)),
    built: saySpan(rule.built),
    serials: rule.serials && saySerials(rule.serials),
    inForce: saySpan(rule.inForce),
    required: rule.required && numberOf(rule.required),
    allowed: rule.allowed.map(numberOf),
    barred: rule.barred.map((bar) => ({ part: numberOf(bar.part), reason: sayBarReason(bar) })),
    replaces: [...replaces],
    sentence: sayRule(rule),
  };
}

function numberOf(part: string): string {
  return splitPartKey(part).canonical;
}

function sayRule({ line, positions, built, required, allowed, barred, action }: FitRule): string {
  const says = [
    required === null ? '' : `${numberOf(required)} is required`,
    allowed.length === 0 ? '' : `${allowed.map(numberOf).join(', ')} may be fitted too`,
    barred.length === 0 ? '' : `${barred.map((bar) => numberOf(bar.part)).join(', ')} must not be fitted`,
  ].filter((text) => text !== '');
  const what = says.length === 0 ? 'an earlier rule no longer holds' : says.join('; ');
  return `${line}, ${positions.join(', ')}, built ${saySpan(built)}: ${what}.${ACTION_WORDS[action]}`;
}
