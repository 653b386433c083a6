import type { Marks } from '../../contracts';
import { tellByMarks } from '../../fastener';
import { done, refused, type Outcome } from '../outcome';
import type { PartRow, Tables } from '../ports/index';
import type { WholeUnit } from '../view-unit/index';
import { seenMarks } from './seen-marks';

/** The fasteners that some paper of the unit's line names: what a part without a number can be. */
export async function fastenersOfLine(tx: Tables, { facts, rulebook }: WholeUnit): Promise<readonly PartRow[]> {
  const rules = rulebook.rulebook.rules.filter((rule) => rule.line === facts?.line);
  const keys = rules.flatMap(({ required, allowed, barred }) => [
    ...(required === null ? [] : [required]),
    ...allowed,
    ...barred.map(({ part }) => part),
  ]);
  return (await tx.catalogue.partsByKeys([...new Set(keys)])).filter((part) => part.fastener !== null);
}

/** The parts that the marks leave possible, best first. */
export function candidatesByMarks(marks: Marks, fasteners: readonly PartRow[]): Outcome<readonly PartRow[]> {
  const catalogue = fasteners.map(({ key, name, fastener }) => ({ partNumber: key, name, spec: fastener! }));
  const told = tellByMarks(seenMarks(marks), catalogue);
  if (!told.ok) return refused('bad-input', told.problems[0]!.sentence, { field: 'marks' });
  const byKey = new Map(fasteners.map((part) => [part.key, part]));
  return done(told.value.candidates.map(({ partNumber }) => byKey.get(partNumber)!));
}
