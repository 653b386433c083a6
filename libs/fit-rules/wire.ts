import { day, formatDay, type DaySpan } from '../day';
import type { KnownSpan, Supersession } from '../part-number';
import type { FitRule, Rulebook } from './fit-rule';
import type { FitRuleFile, RulebookFile, SourceFile, SupersessionFile, UnitFactsFile } from './fit-rule-file';
import { usualStanding, type Source } from './source';
import type { UnitFacts } from './unit-facts';

type DaySpanFile = FitRuleFile['built'];
type KnownSpanFile = FitRuleFile['known'];

/** A rule from its checked file form: days become numbers, open sides become infinite. */
export function ruleFromFile(file: FitRuleFile): FitRule {
  const { built, inForce, known } = file;
  return { ...file, built: spanFromFile(built), inForce: spanFromFile(inForce), known: knownFromFile(known) };
}

/** A rule in its file form; reading it again gives the same rule. */
export function writeFitRule(rule: FitRule): FitRuleFile {
  return {
    key: rule.key,
    version: rule.version,
    line: rule.line,
    models: [...rule.models],
    options: rule.options.map(({ option, fitted }) => ({ option, fitted })),
    positions: [...rule.positions],
    built: writeSpan(rule.built),
    serials: rule.serials && { scheme: rule.serials.scheme, from: rule.serials.from, to: rule.serials.to },
    inForce: writeSpan(rule.inForce),
    known: writeKnown(rule.known),
    source: rule.source,
    required: rule.required,
    allowed: [...rule.allowed],
    barred: rule.barred.map(({ part, reason, note, voidsWarranty }) => ({
      ...{ part, reason, note },
      ...(voidsWarranty ? { voidsWarranty } : {}),
    })),
    action: rule.action,
    replaces: [...rule.replaces],
  };
}

/** A source from its checked file form. */
export function sourceFromFile(file: SourceFile): Source {
  const { issued, effective, received } = file;
  return {
    ...file,
    issued: day(issued),
    effective: effective === null ? null : day(effective),
    received: day(received),
  };
}

/** A source in its file form. */
export function writeSource({ key, kind, publisher, number, title, issued, effective, received }: Source): SourceFile {
  const days = {
    issued: formatDay(issued),
    effective: effective === null ? null : formatDay(effective),
    received: formatDay(received),
  };
  return { key, kind, publisher, number, title, ...days };
}

/** A supersession from its checked file form. */
export function supersessionFromFile(file: SupersessionFile): Supersession {
  return { ...file, known: knownFromFile(file.known) };
}

/** A supersession in its file form. */
export function writeSupersession({ from, to, direction, known }: Supersession): SupersessionFile {
  return { from, to, direction, known: writeKnown(known) };
}

/** A whole rulebook from its checked file form; the usual standing where it names none. */
export function rulebookFromFile(file: RulebookFile): Rulebook {
  return {
    rules: file.rules.map(ruleFromFile),
    sources: file.sources.map(sourceFromFile),
    supersessions: file.supersessions.map(supersessionFromFile),
    standing: file.standing ?? usualStanding,
  };
}

/** A whole rulebook in its file form. */
export function writeRulebook({ rules, sources, supersessions, standing }: Rulebook): RulebookFile {
  return {
    rules: rules.map(writeFitRule),
    sources: sources.map(writeSource),
    supersessions: supersessions.map(writeSupersession),
    standing: { ...standing },
  };
}

/** A unit's facts from their checked file form. */
export function unitFromFile(file: UnitFactsFile): UnitFacts {
  return { ...file, built: file.built.map(spanFromFile) };
}

/** A unit's facts in their file form. */
export function writeUnitFacts({ line, model, options, serial, built }: UnitFacts): UnitFactsFile {
  return { line, model, options: { ...options }, serial: serial && { ...serial }, built: built.map(writeSpan) };
}

function spanFromFile({ from, to }: DaySpanFile): DaySpan {
  return { from: from === null ? -Infinity : day(from), to: to === null ? Infinity : day(to) };
}

function writeSpan({ from, to }: DaySpan): DaySpanFile {
  return { from: from === -Infinity ? null : formatDay(from), to: to === Infinity ? null : formatDay(to) };
}

function knownFromFile({ from, to }: KnownSpanFile): KnownSpan {
  return { from: from === null ? -Infinity : Date.parse(from), to: to === null ? Infinity : Date.parse(to) };
}

function writeKnown({ from, to }: KnownSpan): KnownSpanFile {
  return {
    from: from === -Infinity ? null : new Date(from).toISOString(),
    to: to === Infinity ? null : new Date(to).toISOString(),
  };
}
