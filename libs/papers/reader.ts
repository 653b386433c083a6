import type { Reading, TorqueUnit } from '../contracts';
import { formatDay, MONTHS, parseDay, saySpan } from '../day';
import { inchesFromMm, torqueIn } from '../fastener';
import { sayingIn, type Saying } from './saying';

/** A range of torques in N·m; equal ends are one value. */
export interface TorqueRange {
  readonly low: number;
  readonly high: number;
}

/** Everything with a number in it, as one person reads it. */
export interface Reader extends Saying {
  readonly reading: Reading;
  /** A closed-open span of day texts in words, both days inside it; null is open. */
  span(span: { readonly from: string | null; readonly to: string | null }): string;
  /** In both units, the reader's first (or the one given): `85 N·m (62.7 lbf·ft)`. */
  torque(nm: TorqueRange, first?: TorqueUnit): string;
  /** A length in millimetres in both units, the reader's first: `6.35 mm (0.250 in)`. */
  length(mm: number): string;
  /** A sentence of the program, with the days, torques and lengths in it as this person reads them. */
  sentence(text: string): string;
}

/** How one person reads, for a time zone (IANA name). */
export function readerOf(reading: Reading, zone: string): Reader {
  const say = sayingIn(reading.manner, zone);
  const figures = (value: number) => say.number(Number(value.toPrecision(3)));
  const range = ({ low, high }: TorqueRange, unit: TorqueUnit) => {
    const [from, to] = [figures(torqueIn(low, unit)), figures(torqueIn(high, unit))];
    return `${from === to ? from : `${from} to ${to}`} ${unit}`;
  };
  const both = (one: string, other: string, first: boolean) => (first ? `${one} (${other})` : `${other} (${one})`);
  const length = (mm: number) =>
    both(`${say.number(Number(mm.toFixed(2)))} mm`, `${say.number(inchesFromMm(mm), 3)} in`, reading.length === 'mm');
  const local = (figure: string) =>
    figure.replace(/\d+(?:\.(\d+))?/g, (one, part?: string) => say.number(Number(one), part?.length ?? 0));
  return {
    ...say,
    reading,
    span: ({ from, to }) =>
      saySpan({ from: dayOr(from, -Infinity), to: dayOr(to, Infinity) }, (at) => say.day(formatDay(at))),
    torque: (nm, first = reading.torque) => both(range(nm, 'N·m'), range(nm, 'lbf·ft'), first === 'N·m'),
    length,
    sentence: (text) =>
      text
        .replace(DAY, (written, day: string, month: string, year: string) => {
          const text = `${year}-${String(MONTHS.indexOf(month) + 1).padStart(2, '0')}-${day.padStart(2, '0')}`;
          return parseDay(text) === null ? written : say.day(text);
        })
        .replace(TORQUE, (_, nm: string, feet: string) =>
          both(`${local(nm)} N·m`, `${local(feet)} lbf·ft`, reading.torque === 'N·m'),
        )
        .replace(LENGTH, (_, mm: string, inches: string) =>
          both(`${local(mm)} mm`, `${local(inches)} in`, reading.length === 'mm'),
        ),
  };
}

const dayOr = (text: string | null, open: number): number => (text === null ? open : (parseDay(text) ?? open));

/** Days, torques and lengths as the pure rules write them into their sentences. */
const DAY = new RegExp(`\\b(\\d{1,2}) (${MONTHS.join('|')}) (\\d{4})\\b`, 'g');
const FIGURE = '\\d+(?:\\.\\d+)?';
const TORQUE = new RegExp(`(${FIGURE}(?: to ${FIGURE})?) N·m \\((${FIGURE}(?: to ${FIGURE})?) lbf·ft\\)`, 'g');
const LENGTH = new RegExp(`(${FIGURE}) mm \\((${FIGURE}) in\\)`, 'g');
