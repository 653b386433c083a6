import { z } from 'zod';
import { lookAtPart, type PartLook } from './look-at-part';
import {
  type CataloguePart,
  type CataloguePartInput,
  cataloguePartSchema,
  type MarkCandidate,
  type MarksAnswer,
  type MarksSeen,
  type MarksSeenInput,
  marksSeenSchema,
} from './marks';
import { check, type Outcome } from './problem';
import { tellApart } from './tell-apart';

const FINISH_NEVER_DECIDES = 'Makers change finishes, so the finish alone never decides.';

/**
 * The parts of a catalogue that what was seen can be, best first. Shape and head marks rule out; a head mark that is
 * missing and a finish that differs only move a part down. Refused: bad fields of `marks` or `catalogue`.
 */
export function tellByMarks(marks: MarksSeenInput, catalogue: CataloguePartInput[]): Outcome<MarksAnswer> {
  const seen = check<MarksSeen>(marksSeenSchema, marks, 'marks');
  const parts = check<CataloguePart[]>(z.array(cataloguePartSchema), catalogue, 'catalogue');
  if (!seen.ok) return seen;
  if (!parts.ok) return parts;
  const looked = parts.value.map((part) => lookAtPart(part, seen.value));
  const left = looked.filter((one) => !one.looks.some(({ look }) => look.answer === 'rules-out')).sort(byRank);
  const [first, second] = left;
  const candidates = left.map(candidateOf);
  const finishAlone = isFinishAlone(seen.value);
  const answer = {
    told: toldBy(candidates),
    candidates,
    ruledOut: looked.flatMap(ruledOutOf),
    tellApart: first && second ? tellApart(first.part, second.part) : null,
    finishAlone,
  };
  return { ok: true, value: { ...answer, sentences: sentencesOf(answer) } };
}

function isFinishAlone({ finish, ...others }: MarksSeen): boolean {
  return finish !== null && Object.values(others).every((value) => value === null);
}

function toldBy(candidates: readonly MarkCandidate[]): string | null {
  const [only] = candidates;
  if (only === undefined || candidates.length > 1 || only.differs.includes('head-marks')) return null;
  return only.agrees.some((field) => field !== 'finish') ? only.partNumber : null;
}

/** Head mark missing last; then most that agrees, then nearest readings; the finish only breaks a tie. */
function byRank(one: PartLook, other: PartLook): number {
  const [a, b] = [rankOf(one), rankOf(other)];
  const at = a.findIndex((value, index) => value !== b[index]);
  if (at >= 0) return (a[at] ?? 0) - (b[at] ?? 0);
  return one.part.partNumber < other.part.partNumber ? -1 : 1;
}

function rankOf({ looks }: PartLook): number[] {
  const differs = (field: string): number =>
    looks.filter((one) => one.field === field && one.look.answer === 'differs').length;
  const agrees = looks.filter((one) => one.field !== 'finish' && one.look.answer === 'agrees').length;
  const off = looks.reduce((sum, { look }) => sum + look.off, 0);
  return [differs('head-marks'), -agrees, off, differs('finish')];
}

function candidateOf({ part, looks }: PartLook): MarkCandidate {
  const those = (answer: string) => looks.filter((one) => one.look.answer === answer);
  const differs = those('differs');
  const said = differs.map(
    ({ field, look }) =>
      ` Not so the ${field === 'finish' ? 'finish' : 'head mark, which may have worn off'}: ${look.words}.`,
  );
  return {
    partNumber: part.partNumber,
    name: part.name,
    agrees: those('agrees').map((one) => one.field),
    differs: differs.map((one) => one.field),
    sentence: `${part.partNumber} agrees in ${
      those('agrees')
        .map((one) => one.field.replace('-', ' '))
        .join(', ') || 'nothing looked at'
    }.${said.join('')}`,
  };
}

function ruledOutOf({ part, looks }: PartLook): MarksAnswer['ruledOut'] {
  const against = looks.find(({ look }) => look.answer === 'rules-out');
  if (!against) return [];
  const { field, look } = against;
  const sentence = `${part.partNumber} is ruled out by its ${field.replace('-', ' ')}: ${look.words}.`;
  return [{ partNumber: part.partNumber, field, sentence }];
}

function sentencesOf({ told, candidates, tellApart: pair, finishAlone }: Omit<MarksAnswer, 'sentences'>): string[] {
  const [only] = candidates;
  const sentences = finishAlone ? [`Only the finish was looked at. ${FINISH_NEVER_DECIDES}`] : [];
  if (only === undefined) return [...sentences, 'No part in the catalogue looks like this.'];
  if (told !== null) return [...sentences, `It is ${told}, told by its marks.`];
  if (pair === null) return [...sentences, `Only ${only.partNumber} is left, and the marks do not settle it.`];
  if (pair.look.some((look) => look.field === 'finish') && !finishAlone) sentences.push(FINISH_NEVER_DECIDES);
  return [...sentences, `It can be any of ${candidates.length} parts.`, ...pair.look.map((look) => look.sentence)];
}
