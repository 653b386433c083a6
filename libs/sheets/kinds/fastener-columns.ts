import { bad, good, shown } from '../cell';
import { column } from '../column';
import { GRADE_SYSTEMS, type FastenerSpec, type HeadMarks } from '../../fastener';
import { numberIn, nameOf, listOf, words, type Reader } from '../readers';

export const millimetres = numberIn({ most: 10_000 });
type GradeRef = { readonly system: (typeof GRADE_SYSTEMS)[number]; readonly grade: string };

/** `ISO 898-1 8.8`: the table and the grade in it. */
const gradeRef: Reader<GradeRef> = (cell, how) => {
  // A grade such as 8.8 is a name; a workbook that made a quantity of it has lost nothing.
  const read = typeof cell === 'number' ? good(String(cell)) : words(60)(cell, how);
  if (!read.ok) return read;
  const system = GRADE_SYSTEMS.find((one) => read.value.toLowerCase().startsWith(`${one.toLowerCase()} `));
  if (!system)
    return bad('not-accepted', `${shown(cell)} must name table and grade, such as ISO 898-1 8.8 or SAE J429 5.`);
  return good({ system, grade: read.value.slice(system.length).trim() });
};

/** `none`, `3 lines`, or the stamp as it stands. */
const headMarks: Reader<HeadMarks> = (cell, how) => {
  const read = typeof cell === 'number' ? good(String(cell)) : nameOf(40)(cell, how);
  if (!read.ok) return read;
  if (read.value.toLowerCase() === 'none') return good({ kind: 'none' });
  const lines = /^(\d{1,2}) (radial )?lines?$/i.exec(read.value);
  if (!lines) return good({ kind: 'stamp', text: read.value.replace(/^stamp /i, '') });
  const count = Number(lines[1]);
  return count >= 1 && count <= 12
    ? good({ kind: 'radial-lines', count })
    : bad('not-accepted', `${shown(cell)} must be 1 to 12 lines.`);
};

function writeMarks(marks: HeadMarks): string {
  if (marks.kind === 'none') return 'none';
  if (marks.kind === 'radial-lines') return `${marks.count} lines`;
  return `stamp ${marks.text}`;
}

const mm = (heading: string, says: string, also: readonly string[] = []) =>
  column(heading, millimetres, { also, says: `${says}, in millimetres.`, example: '' });

/** Columns of a part that is a shear fastener; all blank for one that is none. */
export const fastenerColumns = {
  diameter: { ...mm('Diameter mm', 'Shank diameter of a shear fastener', ['diameter', 'dia']), example: '8' },
  length: { ...mm('Length mm', 'Length under the head', ['length']), example: '50' },
  grade: column('Grade', listOf(gradeRef, 12), {
    also: ['class', 'property class', 'strength'],
    says: `Table and grade, such as ISO 898-1 8.8; several between semicolons where it can be any of them. Tables: ${GRADE_SYSTEMS.join(', ')}.`,
    example: 'ISO 898-1 8.8',
    write: (grades) => grades.map(({ system, grade }) => `${system} ${grade}`).join('; '),
  }),
  headMarks: column('Head marks', headMarks, {
    also: ['marks', 'head'],
    says: 'What the head shows: none, 3 lines, or the stamp.',
    example: '',
    write: writeMarks,
  }),
  finish: column('Finish', words(80), { also: ['coating'], says: 'The finish in words.', example: '' }),
  pitch: mm('Thread pitch mm', 'Pitch of the thread', ['pitch']),
  threadStarts: mm('Thread starts mm', 'Where the thread starts, from under the head'),
  grooveRoot: mm('Groove root mm', 'Diameter at the bottom of the groove', ['groove diameter']),
  grooveAt: mm('Groove at mm', 'Middle of the groove, from under the head'),
  grooveWidth: mm('Groove width mm', 'Width of the groove'),
  crossHole: mm('Cross hole mm', 'Diameter of a hole across'),
  crossHoleAt: mm('Cross hole at mm', 'Axis of that hole, from under the head'),
  bore: mm('Bore mm', 'Bore of a hollow pin'),
};

type Value = number | null | undefined;
export interface FastenerCells {
  readonly diameter?: Value;
  readonly length?: Value;
  readonly grade?: readonly GradeRef[] | null;
  readonly headMarks?: HeadMarks | null;
  readonly finish?: string | null;
  readonly pitch?: Value;
  readonly threadStarts?: Value;
  readonly grooveRoot?: Value;
  readonly grooveAt?: Value;
  readonly grooveWidth?: Value;
  readonly crossHole?: Value;
  readonly crossHoleAt?: Value;
  readonly bore?: Value;
}

/** The cells of a fastener, for an export. */
export function cellsOfFastener(spec: FastenerSpec | null): FastenerCells {
  if (!spec) return {};
  const { grade, thread, groove, crossHole } = spec;
  return {
    diameter: spec.diameterMm,
    length: spec.lengthMm,
    grade: grade.kind === 'known' ? [{ system: grade.system, grade: grade.grade }] : grade.candidates,
    headMarks: spec.headMarks,
    finish: spec.finish,
    pitch: thread?.pitchMm ?? null,
    threadStarts: thread?.startsAtMm ?? null,
    grooveRoot: groove?.rootDiameterMm ?? null,
    grooveAt: groove?.atMm ?? null,
    grooveWidth: groove?.widthMm ?? null,
    crossHole: crossHole?.diameterMm ?? null,
    crossHoleAt: crossHole?.atMm ?? null,
    bore: spec.boreDiameterMm,
  };
}

/** Cells that say more of what another cell is about, by that other one: without it they say nothing that can be kept. */
export const SAYS_MORE = {
  pitch: ['threadStarts'],
  grooveRoot: ['grooveAt', 'grooveWidth'],
  crossHole: ['crossHoleAt'],
} as const satisfies Partial<Record<keyof FastenerCells, readonly (keyof FastenerCells)[]>>;

/**
 * What the cells say, as the fastener's schema takes it; null when all are blank. A cell that says more of something that
 * is not given is handed on all the same, so that the schema refuses it by name and nothing is lost unsaid.
 */
export function fastenerOfCells(cells: FastenerCells): object | null {
  const given = Object.keys(fastenerColumns).some((key) => (cells[key as keyof FastenerCells] ?? null) !== null);
  if (!given) return null;
  const { grade } = cells;
  const speaksOf = (head: keyof typeof SAYS_MORE) =>
    [head, ...SAYS_MORE[head]].some((name) => (cells[name] ?? null) !== null);
  return {
    diameterMm: cells.diameter ?? null,
    lengthMm: cells.length ?? null,
    thread: speaksOf('pitch') ? { pitchMm: cells.pitch ?? null, startsAtMm: cells.threadStarts ?? null } : null,
    groove: speaksOf('grooveRoot')
      ? { rootDiameterMm: cells.grooveRoot ?? null, atMm: cells.grooveAt ?? null, widthMm: cells.grooveWidth ?? null }
      : null,
    crossHole: speaksOf('crossHole') ? { diameterMm: cells.crossHole ?? null, atMm: cells.crossHoleAt ?? null } : null,
    boreDiameterMm: cells.bore ?? null,
    grade: grade?.length === 1 ? { kind: 'known', ...grade[0] } : { kind: 'one-of', candidates: grade ?? [] },
    headMarks: cells.headMarks ?? null,
    finish: cells.finish ?? null,
  };
}
