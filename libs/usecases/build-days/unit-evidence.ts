import { EvidenceSchema, type Evidence } from '../../build-date';
import { day, formatDay } from '../../day';
import type { EvidenceRow, UnitRow } from '../ports/index';

/** What of a unit says something about its build day, besides the evidence that was recorded. */
export type EvidencedUnit = Pick<UnitRow, 'serial' | 'line' | 'maker'>;

/** Ids of pieces that follow from the unit's identity and have no row of their own. */
export const SERIAL_ID = 'serial';
export const PRODUCTION_ID = 'production';

/**
 * All evidence of a unit: its recorded pieces, and the two that its identity brings along (the serial number and the
 * time its line was made) unless a recorded piece says the same, which is how such a piece is set aside.
 */
export function evidenceOf(unit: EvidencedUnit, rows: readonly EvidenceRow[]): Evidence[] {
  const recorded = rows.flatMap((row) => {
    const read = EvidenceSchema.safeParse({ ...row.data, kind: row.kind, id: String(row.id), ...asideOf(row) });
    return read.success ? [read.data] : [];
  });
  return [
    ...impliedEvidence(unit).filter((implied) => !recorded.some((piece) => saysTheSame(piece, implied))),
    ...recorded,
  ];
}

/** The pieces that follow from the unit's identity. */
export function impliedEvidence({ serial, line, maker }: EvidencedUnit): Evidence[] {
  if (!line || !maker) return [];
  const implied: Evidence[] = [
    {
      id: PRODUCTION_ID,
      kind: 'production-span',
      first: line.producedFrom,
      last: line.producedUntil === null ? null : dayBefore(line.producedUntil),
    },
  ];
  if (serial !== null && serial.trim() !== '') {
    implied.unshift({ id: SERIAL_ID, kind: 'serial-scheme', maker: maker.code, line: line.code, serial });
  }
  return implied;
}

function asideOf({ setAside }: EvidenceRow): Pick<Evidence, 'setAside'> {
  return setAside ? { setAside: { reason: setAside.why, by: setAside.by ?? 'somebody' } } : {};
}

function saysTheSame(piece: Evidence, implied: Evidence): boolean {
  if (piece.kind === 'serial-scheme' && implied.kind === 'serial-scheme') {
    return squeezed(piece.serial) === squeezed(implied.serial);
  }
  return piece.kind === 'production-span' && implied.kind === 'production-span';
}

const squeezed = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]/g, '');

/** The line's last day is kept as the first day on which it was no longer made; evidence names the last one. */
function dayBefore(text: string): string {
  return formatDay(day(text) - 1);
}
