import type { Marks } from '../../contracts';
import { tellByMarks, type MarkField } from '../../fastener';
import { done, refused, type Outcome } from '../outcome';
import type { PartRow, Tables } from '../ports/index';
import type { WholeUnit } from '../view-unit/index';
import { seenMarks } from './seen-marks';

/** A part it can be by its marks. */
export interface MarkedPart {
  readonly part: PartRow;
  readonly agrees: readonly MarkField[];
  readonly differs: readonly MarkField[];
  readonly sentence: string;
}

/** What the marks say, over the parts it can be at all. */
export interface MarksSaid {
  /** Best first. */
  readonly candidates: readonly MarkedPart[];
  readonly ruledOut: readonly { readonly part: PartRow; readonly sentence: string }[];
  /** What to look at to tell the two best apart. */
  readonly tellApart: readonly string[];
  /** The one part it is; null while the marks leave more than one, or too little was looked at. */
  readonly told: PartRow | null;
  readonly finishAlone: boolean;
  readonly sentences: readonly string[];
}

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

/** Holds the parts against what was seen. Refused: a mark that no table knows. */
export function lookAtMarks(marks: Marks, fasteners: readonly PartRow[]): Outcome<MarksSaid> {
  const byLabel = new Map(fasteners.map((part) => [labelOf(part, fasteners), part]));
  const catalogue = [...byLabel].map(([partNumber, { name, fastener }]) => ({ partNumber, name, spec: fastener! }));
  const answer = tellByMarks(seenMarks(marks), catalogue);
  if (!answer.ok) return refused('bad-input', answer.problems[0]!.sentence, { field: 'marks' });
  const { candidates, ruledOut, tellApart, told, finishAlone, sentences } = answer.value;
  return done({
    candidates: candidates.map(({ partNumber, agrees, differs, sentence }) => {
      return { part: byLabel.get(partNumber)!, agrees, differs, sentence };
    }),
    ruledOut: ruledOut.map(({ partNumber, sentence }) => ({ part: byLabel.get(partNumber)!, sentence })),
    tellApart: tellApart?.look.map(({ sentence }) => sentence) ?? [],
    told: told === null ? null : byLabel.get(told)!,
    finishAlone,
    sentences,
  });
}

/** The number as printed, with the maker beside it where two makers print the same. */
function labelOf({ key, number, maker }: PartRow, all: readonly PartRow[]): string {
  return all.some((other) => other.number === number && other.key !== key) ? `${number} (${maker})` : number;
}
