import { shearJointSchema, type ShearJoint } from '../../../fastener';
import { cellsOfJoint, jointOfCells, type CellProblem, type PositionSheetRow } from '../../../sheets';
import type { BulkPosition, WeighedRow } from '../../ports/index';
import { added, alike, changed, problem, rejected, same, settled, type KindRun, type OpenKind } from '../kind-work';
import { SaidBefore } from '../said-before';
import { newRevision } from '../new-revision';
import { demandOf, readShape } from '../../../shape';

const keyOf = ({ line, code }: { line: string; code: string }): string => JSON.stringify([line, code]);

/** Positions of lines, new ones after those that are there. */
export const openPositions: OpenKind = async ({ tx, actor }): Promise<KindRun> => {
  const lines = new Set((await tx.catalogue.lines()).map(({ code }) => code));
  const all = (await tx.bulk.positions()).map((one) => ({
    ...one,
    joint: one.joint && shearJointSchema.parse(one.joint),
  }));
  const known = new Map(all.map((one) => [keyOf(one), one]));
  const last = new Map<string, number>();
  for (const { line, sortOrder } of all) last.set(line, Math.max(last.get(line) ?? 0, sortOrder));
  const said = new SaidBefore();
  let writes: BulkPosition[] = [];
  const weigh = (n: number, row: PositionSheetRow): WeighedRow => {
    const again = said.look(n, keyOf(row), row, `position ${row.code} of ${row.line}`);
    if (again) return again;
    if (!lines.has(row.line))
      return rejected(
        n,
        problem('line', 'not-on-file', `There is no line "${row.line}" on file; bring lines in first.`),
      );
    const before = known.get(keyOf(row));
    const placeNames = [...(row.places ?? before?.placeNames ?? [row.name])];
    if (before && placeNames.length < before.placeNames.length) {
      const says = `${row.code} has ${before.placeNames.length} places on file, and parts may be recorded in them; it cannot have fewer.`;
      return rejected(n, problem('places', 'conflict', says));
    }
    const joint = jointFor(row, before?.joint ?? null);
    if (!joint.ok) return rejected(n, joint.problem);
    const position: BulkPosition = {
      line: row.line,
      code: row.code,
      name: row.name,
      assembly: row.assembly,
      placeNames: placeNames.length === 0 ? [row.name] : placeNames,
      sketchX: settled(row.sketchX, before?.sketchX, 0),
      sketchY: settled(row.sketchY, before?.sketchY, 0),
      sortOrder: before?.sortOrder ?? (last.get(row.line) ?? 0) + n,
      joint: joint.value,
    };
    if (before && alike(before, position)) return same(n);
    writes.push(position);
    return before ? changed(n) : added(n);
  };
  return {
    weigh(rows) {
      writes = [];
      return Promise.resolve(rows.map(({ n, values }) => weigh(n, values as unknown as PositionSheetRow)));
    },
    write: () => tx.bulk.savePositions(writes),
    finish: () => newRevision(tx, actor),
  };
};

type JointFor =
  { readonly ok: true; readonly value: ShearJoint | null } | { readonly ok: false; readonly problem: CellProblem };

function jointFor(row: PositionSheetRow, kept: ShearJoint | null): JointFor {
  const before = cellsOfJoint(kept);
  const names = Object.keys(cellsOfJoint(EXAMPLE)) as (keyof typeof before)[];
  const given = Object.fromEntries(names.filter((name) => row[name] !== undefined).map((name) => [name, row[name]]));
  if (Object.keys(given).length === 0) return { ok: true, value: kept };
  const cells = jointOfCells({ ...before, ...given });
  if (cells === null) return { ok: true, value: null };
  const read = readShape(shearJointSchema, cells);
  if (read.ok) return { ok: true, value: read.value };
  const [lacking] = read.problems;
  const says = `As a joint it is not whole: ${lacking.path.join('.')} ${demandOf(lacking)}.`;
  return { ok: false, problem: problem(FIELD_OF[String(lacking.path[0])] ?? 'shaftRadius', 'not-accepted', says) };
}

const FIELD_OF: Readonly<Record<string, string>> = { planes: 'planes', shearPlanesAtMm: 'planesAt' };

/** Names every cell of a joint. */
const EXAMPLE = shearJointSchema.parse({ shaftRadiusMm: 1, planes: 1 });
