import { z } from 'zod';
import { day, formatDay } from '../day';
import type { FitRule, Rulebook } from './fit-rule';
import { dayText, instantText, partKeyText, rulebookFile, unitFactsFile } from './fit-rule-file';
import { createJudge, endOfDayUtc } from './judge';
import { tiedParts } from './scopes';
import type { Judgement, PartQuestion } from './verdict';
import { rulebookFromFile, unitFromFile, writeRulebook, writeUnitFacts } from './wire';

/** All that a verdict rests on, in one file: years later it gives the same verdict in the same words. */
export const verdictRecord = z.strictObject({
  format: z.literal(1),
  question: z.strictObject({
    unit: unitFactsFile,
    position: z.string(),
    parts: z.array(partKeyText),
    fittedOn: dayText.nullable(),
  }),
  today: dayText,
  now: instantText,
  /** The last instant of the fitting day at the shop; null when it came with the unit. */
  endOfFittingDay: instantText.nullable(),
  rulebook: rulebookFile,
});
export type VerdictRecord = z.infer<typeof verdictRecord>;

/** Writes down what a verdict rests on: the question, the two clocks, and the part of the rulebook that bears on it. */
export function recordQuestion(
  rulebook: Rulebook,
  question: PartQuestion,
  { today, now, endOfDay = endOfDayUtc }: { today: number; now: number; endOfDay?: (day: number) => number },
): VerdictRecord {
  const { unit, position, parts, fittedOn } = question;
  return {
    format: 1,
    question: {
      unit: writeUnitFacts(unit),
      position,
      parts: [...parts],
      fittedOn: fittedOn === null ? null : formatDay(fittedOn),
    },
    today: formatDay(today),
    now: new Date(now).toISOString(),
    endOfFittingDay: fittedOn === null ? null : new Date(endOfDay(fittedOn)).toISOString(),
    rulebook: writeRulebook(rulebookFor(rulebook, unit.line, position, parts)),
  };
}

/** Judges a recorded question again, by the stored papers and nothing else. */
export function replay(record: VerdictRecord): { readonly judgement: Judgement; readonly rulebook: Rulebook } {
  const { unit, position, parts, fittedOn } = record.question;
  const rulebook = rulebookFromFile(record.rulebook);
  const judge = createJudge(rulebook, {
    today: day(record.today),
    now: Date.parse(record.now),
    endOfDay: () => Date.parse(record.endOfFittingDay!),
  });
  const asked = { unit: unitFromFile(unit), position, parts, fittedOn: fittedOn === null ? null : day(fittedOn) };
  return { judgement: judge.judge(asked), rulebook };
}

/** The part of a rulebook that can bear on some parts in one position of one line, of every time. */
export function rulebookFor(rulebook: Rulebook, line: string, position: string, parts: readonly string[]): Rulebook {
  const rules = rulebook.rules.filter((rule) => rule.line === line && rule.positions.includes(position));
  const sourceKeys = new Set(rules.map(({ source }) => source));
  const tied = tiedParts(rulebook.supersessions, [...parts, ...rules.flatMap(partsOfRule)]);
  return {
    rules,
    sources: rulebook.sources.filter(({ key }) => sourceKeys.has(key)),
    supersessions: rulebook.supersessions.filter(({ from }) => tied.has(from)),
    standing: rulebook.standing,
  };
}

function partsOfRule({ required, allowed, barred }: FitRule): string[] {
  return [...(required === null ? [] : [required]), ...allowed, ...barred.map(({ part }) => part)];
}
