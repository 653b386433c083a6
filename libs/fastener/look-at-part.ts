import type { FastenerSpec, HeadMarks } from './fastener-spec';
import { candidatesOf, GRADE_ROWS } from './grade-strength';
import { gradesForMarks, sameMarks, sayMarks } from './grades-for-marks';
import { type CataloguePart, MARK_FIELDS, type MarkField, type MarksSeen, READING_TOLERANCE_MM } from './marks';
import { sayLength } from './units';

/** How one mark of one part compares with what was seen; null where it was not looked at or is not in the catalogue. */
interface Look {
  answer: 'agrees' | 'differs' | 'rules-out';
  /** How far a reading is off, as a share of its tolerance. */
  off: number;
  words: string;
}

/** One part held against what was seen. */
export interface PartLook {
  part: CataloguePart;
  looks: { field: MarkField; look: Look }[];
}

/** Holds a part of the catalogue against what was seen, mark by mark. */
export function lookAtPart(part: CataloguePart, seen: MarksSeen): PartLook {
  const looks = MARK_FIELDS.flatMap((field) => {
    const look = LOOKS[field](part.spec, seen);
    return look === null ? [] : [{ field, look }];
  });
  return { part, looks };
}

const LOOKS: Record<MarkField, (spec: FastenerSpec, seen: MarksSeen) => Look | null> = {
  'head-marks': lookAtHead,
  thread: (spec, seen) =>
    feature('a thread', spec.thread !== null, seen.threaded ?? (seen.pitchMm === null ? null : true)),
  groove: lookAtGroove,
  'cross-hole': (spec, seen) => feature('a cross hole', spec.crossHole !== null, seen.crossDrilled),
  diameter: (spec, seen) => reading(spec.diameterMm, seen.diameterMm, READING_TOLERANCE_MM.diameter),
  length: (spec, seen) => reading(spec.lengthMm, seen.lengthMm, READING_TOLERANCE_MM.length),
  pitch: (spec, seen) => reading(spec.thread?.pitchMm ?? null, seen.pitchMm, READING_TOLERANCE_MM.pitch),
  finish: lookAtFinish,
};

/** What the head of a part should show: as the catalogue says, else as its grade's table says, else not known. */
export function expectedMarks(spec: FastenerSpec): HeadMarks | null {
  if (spec.headMarks !== null) return spec.headMarks;
  const { grade } = spec;
  if (grade.kind !== 'known') return null;
  const row = GRADE_ROWS.find((one) => one.system === grade.system && one.grade === grade.grade);
  return row && (row.markRequired || row.mark.kind === 'none') ? row.mark : null;
}

/** A mark that is not there may have worn off; a mark that is there cannot have grown. */
function lookAtHead(spec: FastenerSpec, seen: MarksSeen): Look | null {
  const expected = expectedMarks(spec);
  if (seen.headMarks === null) return null;
  if (expected === null) return lookAtGrade(spec, seen.headMarks);
  const words = `seen ${sayMarks(seen.headMarks)}, it has ${sayMarks(expected)}`;
  if (sameMarks(seen.headMarks, expected)) return { answer: 'agrees', off: 0, words };
  return { answer: seen.headMarks.kind === 'none' ? 'differs' : 'rules-out', off: 0, words };
}

/** Where a head of its grade may go unmarked, a mark still tells: the tables say which grades show it. */
function lookAtGrade({ grade }: FastenerSpec, seen: HeadMarks): Look | null {
  if (grade.kind !== 'known' || seen.kind === 'none') return null;
  const shown = gradesForMarks(seen);
  if (!shown.ok) return null;
  const agrees = candidatesOf(shown.value).some((one) => one.system === grade.system && one.grade === grade.grade);
  if (agrees) return { answer: 'agrees', off: 0, words: `seen ${sayMarks(seen)}, as its grade may show` };
  return { answer: 'rules-out', off: 0, words: `seen ${sayMarks(seen)}, which its grade never shows` };
}

function lookAtGroove(spec: FastenerSpec, seen: MarksSeen): Look | null {
  const grooved = seen.grooved ?? (seen.grooveRootDiameterMm === null ? null : true);
  const there = feature('a groove', spec.groove !== null, grooved);
  if (there?.answer !== 'agrees' || spec.groove === null) return there;
  return reading(spec.groove.rootDiameterMm, seen.grooveRootDiameterMm, READING_TOLERANCE_MM.grooveRoot) ?? there;
}

function lookAtFinish(spec: FastenerSpec, seen: MarksSeen): Look | null {
  if (spec.finish === null || seen.finish === null) return null;
  const [is, has] = [seen.finish.trim().toLowerCase(), spec.finish.trim().toLowerCase()];
  return { answer: is === has ? 'agrees' : 'differs', off: 0, words: `seen ${is}, it is listed as ${has}` };
}

function feature(name: string, has: boolean, seen: boolean | null): Look | null {
  if (seen === null) return null;
  const words = `seen ${seen ? name : `no ${name.slice(2)}`}, it has ${has ? 'one' : 'none'}`;
  return { answer: seen === has ? 'agrees' : 'rules-out', off: 0, words };
}

function reading(has: number | null, seen: number | null, toleranceMm: number): Look | null {
  if (has === null || seen === null) return null;
  const off = Math.abs(has - seen) / toleranceMm;
  const words = `measured ${sayLength(seen)}, it has ${sayLength(has)}`;
  return { answer: off <= 1 + 1e-9 ? 'agrees' : 'rules-out', off, words };
}
