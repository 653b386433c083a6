import { EvidenceSchema } from '../../../build-date';
import { evidenceOfCells, hasValue, type CellProblem, type OwnerSheetRow } from '../../../sheets';
import type { BulkUnit, LineRow, NewBulkUnit } from '../../ports/index';
import { alike, problem } from '../kind-work';
import { readShape, sayShape } from '../../../shape';

/** A unit as a row gives it, against the one on file. `ownerId` is settled when it is written. */
export interface RowUnit {
  readonly unit: Omit<NewBulkUnit, 'ownerId'>;
  readonly before: BulkUnit | null;
  /** Pieces that are not on file yet. */
  readonly evidence: readonly { readonly kind: string; readonly data: object }[];
}

/** What is wrong with a row's unit against the catalogue. */
export function unitProblems(row: OwnerSheetRow, line: LineRow | undefined): CellProblem[] {
  if (!row.line) return [];
  if (!line) return [problem('line', 'not-on-file', `There is no line "${row.line}" on file; bring lines in first.`)];
  const problems: CellProblem[] = [];
  if (row.model && !line.models.some(({ number }) => number === row.model))
    problems.push(
      problem(
        'model',
        'not-on-file',
        `${line.name} has no model "${row.model}"; it has ${line.models.map(({ number }) => number).join(', ') || 'none'}.`,
      ),
    );
  const strange = row.options?.find(({ option }) => !line.options.some(({ code }) => code === option));
  if (strange)
    problems.push(
      problem(
        'options',
        'not-on-file',
        `${line.name} has no option "${strange.option}"; it has ${line.options.map(({ code }) => code).join(', ') || 'none'}.`,
      ),
    );
  for (const { kind, data } of evidenceOfCells(row)) {
    const read = readShape(EvidenceSchema, { id: 'sheet', kind, ...data });
    if (!read.ok) problems.push(problem(FIELD_OF[kind] ?? null, 'not-accepted', sayShape(read.problems[0])));
  }
  return problems;
}

const FIELD_OF: Readonly<Record<string, string>> = {
  'printed-date': 'printedDate',
  receipt: 'receipt',
  'first-seen': 'firstSeen',
  'standard-edition': 'standard',
  'engine-family': 'engineFamily',
  vin: 'vin',
  'tyre-code': 'tyreCode',
  'part-stamp': 'stamps',
};

/** The unit as it would stand: the file's values where it gives some, else those on file. */
export function unitOfRow(row: OwnerSheetRow, before: BulkUnit | null): RowUnit {
  const keep = <T>(given: T | null | undefined, kept: T | null): T | null => (given === undefined ? kept : given);
  const options = {
    ...before?.options,
    ...Object.fromEntries((row.options ?? []).map((one) => [one.option, one.fitted])),
  };
  const serial = keep(row.serial, before?.serial ?? null);
  return {
    unit: {
      line: row.line ?? before?.line ?? null,
      model: keep(row.model, before?.model ?? null),
      serial,
      serialAbsent: serial !== null ? null : keep(row.serialAbsent, before?.serialAbsent ?? null),
      options,
      plate: keep(row.plate, before?.plate ?? null) ?? '',
    },
    before,
    evidence: evidenceOfCells(row).filter((piece) => !before?.evidence.some((kept) => saysSame(kept, piece))),
  };
}

/** What a row says of the piece is in the piece on file, which may say more. */
function saysSame(kept: BulkUnit['evidence'][number], piece: { kind: string; data: Record<string, string> }): boolean {
  return kept.kind === piece.kind && Object.entries(piece.data).every(([name, value]) => kept.data[name] === value);
}

/** True when the row changes nothing of its unit but perhaps the owner. */
export function unitStays({ unit, before, evidence }: RowUnit): boolean {
  if (!before || hasValue(evidence)) return false;
  const { line, model, serial, serialAbsent, options, plate } = before;
  return alike({ line, model, serial, serialAbsent, options, plate }, unit);
}
