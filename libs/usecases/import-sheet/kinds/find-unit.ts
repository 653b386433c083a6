import type { CellProblem } from '../../../sheets';
import type { BulkUnit, Tables } from '../../ports/index';
import { problem } from '../kind-work';

/** How a row names its unit. */
export interface NamedUnit {
  readonly unitNumber?: number | null;
  readonly line?: string | null;
  readonly serial?: string | null;
}

export type FoundUnit =
  { readonly ok: true; readonly unit: BulkUnit | null } | { readonly ok: false; readonly problem: CellProblem };

/** Upper case, letters and digits only: the form in which serials are compared. */
export const squeezed = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]/g, '');

/** Looks the units up that rows name, all at once; then answers for each row. */
export async function unitFinder(
  tx: Tables,
  rows: readonly NamedUnit[],
  sight: number | null,
): Promise<(row: NamedUnit) => FoundUnit> {
  const ids = rows.flatMap(({ unitNumber }) => (unitNumber ? [unitNumber] : []));
  const serials = rows.flatMap(({ unitNumber, serial }) => (serial && !unitNumber ? [serial] : []));
  const byId = new Map((ids.length === 0 ? [] : await tx.bulk.unitsByIds(ids, sight)).map((unit) => [unit.id, unit]));
  const bySerial = new Map<string, BulkUnit[]>();
  for (const unit of serials.length === 0 ? [] : await tx.bulk.unitsBySerials(serials, sight)) {
    const key = keyOf(unit.line, unit.serial!);
    bySerial.set(key, [...(bySerial.get(key) ?? []), unit]);
  }
  return ({ unitNumber, line, serial }) => {
    if (unitNumber) {
      const unit = byId.get(unitNumber);
      if (!unit)
        return no(
          'unitNumber',
          'not-on-file',
          `There is no unit ${unitNumber} on file; leave its number out for a new one.`,
        );
      if (line && unit.line && unit.line !== line)
        return no('line', 'conflict', `Unit ${unitNumber} is a ${unit.line} on file, not a ${line}.`);
      return { ok: true, unit };
    }
    const found = serial ? (bySerial.get(keyOf(line ?? null, serial)) ?? []) : [];
    if (found.length > 1)
      return no(
        'serial',
        'conflict',
        `${found.length} units of ${line} have serial ${serial}; give the unit number too.`,
      );
    return { ok: true, unit: found[0] ?? null };
  };
}

const keyOf = (line: string | null, serial: string): string => `${line ?? ''} ${squeezed(serial)}`;

function no(field: string, code: CellProblem['code'], says: string): FoundUnit {
  return { ok: false, problem: problem(field, code, says) };
}
