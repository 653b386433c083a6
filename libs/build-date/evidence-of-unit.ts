import { day, formatDay, type Day, type DaySet } from '../day';
import type { Evidence } from './evidence';
import type { PreparedShop } from './prepare-shop';
import { possibleKeys, readSerial } from './read-serial';

/** What of a unit says something about its build day, besides the evidence that was recorded. */
export interface DatedUnit {
  readonly serial: string | null;
  /** Null while nobody knows what it is. `producedUntil` is the first day on which it was no longer made. */
  readonly line: {
    readonly code: string;
    readonly maker: string;
    readonly producedFrom: string;
    readonly producedUntil: string | null;
  } | null;
}

/** Ids of pieces that follow from the unit's identity and have no row of their own. */
export const SERIAL_ID = 'serial';
export const PRODUCTION_ID = 'production';

/**
 * All evidence of a unit: its recorded pieces, and the two that its identity brings along (the serial number and the
 * time its line was made) unless a recorded piece says the same, which is how such a piece is set aside.
 */
export function evidenceOfUnit(unit: DatedUnit, recorded: readonly Evidence[]): Evidence[] {
  return [
    ...impliedEvidence(unit).filter((implied) => !recorded.some((piece) => saysTheSame(piece, implied))),
    ...recorded,
  ];
}

/** The pieces that follow from the unit's identity. */
export function impliedEvidence({ serial, line }: DatedUnit): Evidence[] {
  if (!line) return [];
  const last = line.producedUntil === null ? null : formatDay(day(line.producedUntil) - 1);
  const implied: Evidence[] = [{ id: PRODUCTION_ID, kind: 'production-span', first: line.producedFrom, last }];
  if (serial !== null && serial.trim() !== '')
    implied.unshift({ id: SERIAL_ID, kind: 'serial-scheme', maker: line.maker, line: line.code, serial });
  return implied;
}

/**
 * The serial's scheme and key where one reading of it is left within the possible build days; the scheme alone where
 * only the key is open; null where nothing can be said, and for a serial that a person has set aside: its characters
 * are not trusted.
 */
export function serialOfUnit(
  { serial, line }: DatedUnit,
  evidence: readonly Evidence[],
  built: DaySet,
  shop: PreparedShop,
  today: Day,
): { readonly scheme: string; readonly key: string | null } | null {
  if (serial === null || !line) return null;
  const piece = evidence.find((one) => one.kind === 'serial-scheme' && squeezed(one.serial) === squeezed(serial));
  if (piece?.setAside) return null;
  const keys = possibleKeys(readSerial(serial, { maker: line.maker, line: line.code }, shop, today), built);
  const [first] = keys;
  if (!first || keys.some(({ scheme }) => scheme !== first.scheme)) return null;
  return { scheme: first.scheme, key: keys.length === 1 ? first.key : null };
}

function saysTheSame(piece: Evidence, implied: Evidence): boolean {
  if (piece.kind === 'serial-scheme' && implied.kind === 'serial-scheme')
    return squeezed(piece.serial) === squeezed(implied.serial);
  return piece.kind === 'production-span' && implied.kind === 'production-span';
}

const squeezed = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]/g, '');
