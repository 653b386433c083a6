import type { FastenerSpec } from './fastener-spec';
import { candidatesOf } from './grade-strength';
import { sayMarks } from './grades-for-marks';
import { expectedMarks } from './look-at-part';
import type { CataloguePart, MarkField, MarksAnswer } from './marks';
import { sayLength } from './units';

type Pair = NonNullable<MarksAnswer['tellApart']>;

/** A difference in millimetres that a calliper or a pitch gauge shows for certain. */
const SEEN_MM = { diameter: 0.1, length: 0.5, pitch: 0.05 } as const;

/**
 * What to look at to tell two parts apart, cheapest first. Where only the grade or the finish sets them apart, it
 * says that no mark decides, rather than let the finish do so.
 */
export function tellApart(one: CataloguePart, other: CataloguePart): Pair {
  const look = MARKS_IN_WORDS.flatMap(({ field, name, words, least }) => {
    const [a, b] = [words(one.spec), words(other.spec)];
    if (a === null || b === null || !apart(a, b, least)) return [];
    const sentence = `Look at the ${name}: ${one.partNumber} has ${say(a)}, ${other.partNumber} has ${say(b)}.`;
    return [{ field, sentence }];
  });
  return { between: [one.partNumber, other.partNumber], look: look.length > 0 ? look : [noMark(one, other)] };
}

interface MarkInWords {
  field: MarkField;
  name: string;
  words: (spec: FastenerSpec) => string | number | null;
  least: number;
}

const MARKS_IN_WORDS: readonly MarkInWords[] = [
  { field: 'head-marks', name: 'head', words: headWords, least: 0 },
  { field: 'thread', name: 'shank', words: (spec) => (spec.thread ? 'a thread' : 'no thread'), least: 0 },
  { field: 'groove', name: 'shank', words: (spec) => (spec.groove ? 'a groove' : 'no groove'), least: 0 },
  {
    field: 'groove',
    name: 'bottom of the groove',
    words: (spec) => spec.groove?.rootDiameterMm ?? null,
    least: SEEN_MM.diameter,
  },
  {
    field: 'cross-hole',
    name: 'shank',
    words: (spec) => (spec.crossHole ? 'a cross hole' : 'no cross hole'),
    least: 0,
  },
  { field: 'diameter', name: 'diameter', words: (spec) => spec.diameterMm, least: SEEN_MM.diameter },
  { field: 'length', name: 'length', words: (spec) => spec.lengthMm, least: SEEN_MM.length },
  { field: 'pitch', name: 'pitch of the thread', words: (spec) => spec.thread?.pitchMm ?? null, least: SEEN_MM.pitch },
];

function headWords(spec: FastenerSpec): string | null {
  const marks = expectedMarks(spec);
  return marks === null ? null : sayMarks(marks);
}

function apart(a: string | number, b: string | number, least: number): boolean {
  return typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) >= least : a !== b;
}

function say(value: string | number): string {
  return typeof value === 'number' ? sayLength(value) : value;
}

function noMark(one: CataloguePart, other: CataloguePart): Pair['look'][number] {
  const pair = `${one.partNumber} and ${other.partNumber}`;
  if (gradeWords(one.spec) !== gradeWords(other.spec)) {
    const sentence = `No mark tells ${pair} apart: they differ in grade only. Ask for the bag or the papers.`;
    return { field: 'grade', sentence };
  }
  if (one.spec.finish !== other.spec.finish) {
    const sentence = `${pair} differ in finish only, and makers change finishes. Ask for the bag or the papers.`;
    return { field: 'finish', sentence };
  }
  return {
    field: 'grade',
    sentence: `${pair} are alike in every mark the catalogue knows. Ask for the bag or the papers.`,
  };
}

function gradeWords(spec: FastenerSpec): string {
  return candidatesOf(spec.grade)
    .map(({ system, grade }) => `${system} ${grade}`)
    .sort()
    .join();
}
