import { EvidenceSchema, evidenceOfUnit, type DatedUnit, type Evidence } from '../../build-date';
import type { EvidenceRow, UnitRow } from '../ports/index';

export { PRODUCTION_ID, SERIAL_ID } from '../../build-date';

/** What of a unit says something about its build day, besides the evidence that was recorded. */
export type EvidencedUnit = Pick<UnitRow, 'serial' | 'line' | 'maker'>;

/** The unit as the build-date library takes it. */
export function datedUnit({ serial, line, maker }: EvidencedUnit): DatedUnit {
  if (!line || !maker) return { serial, line: null };
  const { code, producedFrom, producedUntil } = line;
  return { serial, line: { code, maker: maker.code, producedFrom, producedUntil } };
}

/** All evidence of a unit: its recorded pieces, and what its identity brings along. */
export function evidenceOf(unit: EvidencedUnit, rows: readonly EvidenceRow[]): Evidence[] {
  const recorded = rows.flatMap((row) => {
    const read = EvidenceSchema.safeParse({ ...row.data, kind: row.kind, id: String(row.id), ...asideOf(row) });
    return read.success ? [read.data] : [];
  });
  return evidenceOfUnit(datedUnit(unit), recorded);
}

function asideOf({ setAside }: EvidenceRow): Pick<Evidence, 'setAside'> {
  return setAside ? { setAside: { reason: setAside.why, by: setAside.by ?? 'somebody' } } : {};
}
