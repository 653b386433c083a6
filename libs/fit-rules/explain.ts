import { sayDay, saySpan, type DaySpan } from '../day';
import type { FitRule, Rulebook, RuleRef } from './fit-rule';
import { listed, namingFor, sayBarReason, saySource, type FullNaming, type Naming } from './naming';
import type { Ground, LostBecause } from './ruling';
import { capital, sayPlace, sayRuling, saySaying, saySerials } from './say-ruling';
import { sayVerdict } from './say-verdict';
import type { Judgement, PartJudgement, ThenVerdict } from './verdict';

const MILLISECONDS_A_DAY = 86_400_000;

/**
 * The whole chain behind a verdict, line by line: the question, the verdict, the ruling, how the rules were weighed in
 * every stretch, what the papers of the fitting day said, what the shop knew, and every rule that was looked at.
 */
export function explain(
  judgement: Judgement,
  rulebook: Rulebook,
  naming: Omit<Naming, 'rule'> = {},
): readonly string[] {
  const names = namingFor(rulebook, naming);
  const { ruling, candidates } = judgement;
  return [
    sayQuestion(judgement, names),
    sayVerdict(judgement, names).technician,
    ...sayRuling(ruling, names),
    ...ruling.pieces.flatMap((piece) =>
      piece.grounds.flatMap((ground) => sayGround(ground, names, sayPlace({ ...piece.where, built: [ground.built] }))),
    ),
    ...candidates.flatMap((one) => sayThen(one, judgement, names)),
    ...rulesLookedAt(judgement).map((ref) => sayRule(ref, rulebook, names)),
  ];
}

function sayQuestion({ question, ruling }: Judgement, naming: FullNaming): string {
  const { unit, position, parts, fittedOn } = question;
  const what = parts.length === 0 ? 'a part that cannot be told' : listed([...parts].sort().map(naming.part), 'or');
  const fitted = fittedOn === null ? 'taken as fitted when the unit was built' : `fitted on ${sayDay(fittedOn)}`;
  const model = unit.model === null ? 'model not known' : `model ${unit.model}`;
  return `Asked: ${what} at ${naming.position(position, unit.line)} of a ${naming.line(unit.line)}, ${model}, ${fitted}; by the papers in force on ${sayDay(ruling.inForceOn)}, as known ${sayInstant(ruling.knownAt)}.`;
}

function sayGround({ deciding, overridden, lifted }: Ground, naming: FullNaming, where: string): string[] {
  if (overridden.length === 0 && lifted.length === 0) return [];
  const decided = deciding.length === 0 ? 'no rule decides' : `${listed(deciding.map(sayRef))} decides`;
  const lost = overridden.map(({ rule, because }) => `${sayRef(rule)} (${naming.rule(rule)}) ${sayLost(because)}`);
  const bars = lifted.map(
    ({ part, rule, by }) => `the bar of ${sayRef(rule)} on ${naming.part(part)} is lifted by ${sayRef(by)}`,
  );
  return [`Weighed for units ${where}: ${[decided, ...lost, ...bars].join('; ')}.`];
}

function sayLost(because: LostBecause): string {
  switch (because.code) {
    case 'replaced':
      return `is replaced by ${sayRef(because.by)}`;
    case 'lower-standing':
      return `has a lower standing than ${sayRef(because.than)}`;
    case 'issued-earlier':
      return `was issued before ${sayRef(because.than)}`;
    case 'only-bars':
      return 'only bars';
  }
}

const THEN_WORDS: Readonly<Record<ThenVerdict, string>> = {
  right: 'it was right',
  allowed: 'it was allowed',
  no: 'it did not belong there',
  undecided: 'nothing could be decided',
  disputed: 'it was disputed',
};

function sayThen({ part, then, thenAsKnown }: PartJudgement, { question }: Judgement, naming: FullNaming): string[] {
  const day = question.fittedOn === null ? 'the build day' : sayDay(question.fittedOn);
  const now = `${naming.part(part)}: by the papers in force on ${day}, as known now, ${THEN_WORDS[then]}.`;
  if (thenAsKnown === null) return [now];
  return [now, `${naming.part(part)}: by those papers as the shop knew them that day, ${THEN_WORDS[thenAsKnown]}.`];
}

function rulesLookedAt({ ruling, deciding }: Judgement): readonly RuleRef[] {
  const all = [...deciding];
  for (const { grounds } of ruling.pieces) {
    for (const one of grounds) {
      all.push(...one.deciding, ...one.overridden.map(({ rule }) => rule), ...one.barred.map(({ rule }) => rule));
    }
  }
  const byText = new Map(all.map((ref) => [sayRef(ref), ref]));
  return [...byText.keys()].sort().map((text) => byText.get(text)!);
}

function sayRule(ref: RuleRef, { rules, sources }: Rulebook, naming: FullNaming): string {
  const rule = rules.find(({ key, version }) => key === ref.key && version === ref.version)!;
  const source = sources.find(({ key }) => key === rule.source);
  return `${sayRef(ref)} stands in ${source ? saySource(source) : 'a paper that is missing'}: ${sayRuleBody(rule, naming)}`;
}

/** What a rule says, of which units, and since when. */
export function sayRuleBody(rule: FitRule, naming: FullNaming): string {
  const units = [`units built ${saySpan(rule.built)}`];
  if (rule.models.length > 0) units.push(`models ${listed(rule.models)}`);
  if (rule.serials !== null) units.push(saySerials(rule.serials));
  for (const { option, fitted } of rule.options) units.push(`${fitted ? 'with' : 'without'} ${option}`);
  const says = [...(rule.required === null && rule.allowed.length === 0 ? [] : [saySaying(rule, naming)])];
  for (const bar of rule.barred) says.push(`${naming.part(bar.part)} is barred: ${sayBarReason(bar)}`);
  if (rule.replaces.length > 0) says.push(`it takes the place of ${listed(rule.replaces.map((key) => `rule ${key}`))}`);
  return `for ${units.join(', ')}, ${says.join('; ')}. ${capital(sayInForce(rule.inForce))}.`;
}

function sayInForce(span: DaySpan): string {
  return span.from === -Infinity && span.to === Infinity ? 'in force on any day' : `in force ${saySpan(span)}`;
}

function sayRef({ key, version }: RuleRef): string {
  return `rule ${key} version ${version}`;
}

function sayInstant(instant: number): string {
  if (!Number.isFinite(instant)) return 'at any time';
  return `on ${sayDay(Math.floor(instant / MILLISECONDS_A_DAY))} at ${new Date(instant).toISOString().slice(11, 16)} UTC`;
}
