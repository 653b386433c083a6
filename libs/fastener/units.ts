import Qty from 'js-quantities';
import { type Outcome, problem } from './problem';

/*
 * The edge of the library: inside, everything is millimetres, megapascals and newton metres. A pound-force is
 * written as pound times standard gravity, because the library's own `lbf` and `psi` are rounded in the seventh
 * digit while `lb`, `in` and `gee` are exact (NIST SP 811 appendix B gives the same factors).
 */
const MM_PER_INCH = factor('in', 'mm');
const MPA_PER_KSI = factor('lb*gee/in2', 'MPa') * 1000;
const NM_PER_UNIT = { 'N·m': 1, 'lbf·in': factor('lb*gee*in', 'N*m'), 'lbf·ft': factor('lb*gee*ft', 'N*m') } as const;

/** Units a torque may be written in. */
export type TorqueUnit = keyof typeof NM_PER_UNIT;

function factor(from: string, to: string): number {
  return Qty(1, from).to(to).scalar;
}

/** Inches to millimetres, rounded to a nanometre so that 3/4 in is exactly 19.05 mm. */
export function mmFromInches(inches: number): number {
  return Number((inches * MM_PER_INCH).toFixed(6));
}

/** Millimetres to inches. */
export function inchesFromMm(mm: number): number {
  return mm / MM_PER_INCH;
}

/** Threads per inch to pitch in millimetres. */
export function pitchMmFromTpi(threadsPerInch: number): number {
  return MM_PER_INCH / threadsPerInch;
}

/** Thousands of pounds-force per square inch to megapascals. */
export function mpaFromKsi(ksi: number): number {
  return ksi * MPA_PER_KSI;
}

/** A torque in any of the units to newton metres. */
export function nmFrom(value: number, unit: TorqueUnit): number {
  return value * NM_PER_UNIT[unit];
}

/** Newton metres to any of the units. */
export function torqueIn(nm: number, unit: TorqueUnit): number {
  return nm / NM_PER_UNIT[unit];
}

const WRITTEN_LENGTH = /^(?:(\d+)[ -]+)?(\d+)\/(\d+)\s*(in|")$|^(\d+(?:\.\d+)?|\.\d+)\s*(mm|in|")$/;
const LENGTH_WORDS = 'a length above 0 with its unit, such as 6 mm, 0.25 in, 1/4 in or 1-1/2 in';

/**
 * Reads a length as the bench writes it: `6 mm`, `0.25 in`, `1/4"`, `1-1/2 in`. Answers in millimetres.
 * Refused: a number without a unit (6 could be either), zero, anything else; `field` heads the sentence.
 */
export function readLength(text: string, field: string): Outcome<number> {
  const match = WRITTEN_LENGTH.exec(text.trim());
  const refused: Outcome<number> = { ok: false, problems: [problem('bad-value', field, text, LENGTH_WORDS)] };
  if (!match) return refused;
  const [, whole, over, under, , plain, plainUnit] = match;
  const number = plain === undefined ? Number(whole ?? 0) + Number(over) / Number(under) : Number(plain);
  const mm = plainUnit === 'mm' ? number : mmFromInches(number);
  return Number.isFinite(mm) && mm > 0 ? { ok: true, value: mm } : refused;
}

/** Writes a length for both kinds of calliper: `6.35 mm (0.250 in)`. */
export function sayLength(mm: number): string {
  return `${Number(mm.toFixed(2))} mm (${inchesFromMm(mm).toFixed(3)} in)`;
}
