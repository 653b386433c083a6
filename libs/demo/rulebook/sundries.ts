import type { LineRoom, PartNote } from '../lines/line-room';

/** What the shop stocks beside the parts that rules speak of: name, price, and the last figures of the number. */
const COMMON: readonly (readonly [name: string, priceMinor: number])[] = [
  ['Control cable', 1290],
  ['Grip', 390],
  ['Plug cap', 450],
  ['Air filter element', 890],
  ['Fuel tap', 780],
  ['Recoil cord', 420],
  ['Wheel', 3490],
  ['Axle clip', 60],
  ['Tension spring', 310],
  ['Idler pulley', 1590],
  ['Warning label set', 690],
  ['Touch-up paint', 850],
  ['Grease fitting', 150],
  ['Bolt set, frame', 990],
  ['Cotter set', 290],
];

/** How many of the common parts each line has, so that the whole catalogue comes to 250. */
const COUNTS: Readonly<Record<string, number>> = {
  DRIFTBREAK: 15,
  LOAMER: 15,
  STAVEWRIGHT: 14,
  TWIGMAW: 14,
  SEDGELINE: 14,
  SODTURN: 14,
  BOUGHFALL: 14,
  FALLOWSWEEP: 14,
};

/** First figures of a line's sundries, in its maker's way of writing. */
const FIRST: Readonly<Record<string, (n: string) => string>> = {
  DRIFTBREAK: (n) => `39-70${n}`,
  LOAMER: (n) => `29-70${n}`,
  STAVEWRIGHT: (n) => `59-70${n}`,
  TWIGMAW: (n) => `G390-0${n}`,
  SEDGELINE: (n) => `G490-0${n}`,
  SODTURN: (n) => `G590-0${n}`,
  BOUGHFALL: (n) => `690.100.${n}`,
  FALLOWSWEEP: (n) => `790.100.${n}`,
};

/** The sundries of a line. */
export function sundriesOf(line: LineRoom): PartNote[] {
  return COMMON.slice(0, COUNTS[line.code] ?? 0).map(([name, priceMinor], index) => ({
    number: FIRST[line.code]!(String(10 + index * 3)),
    name: `${name}, ${line.name.split(' ')[0]}`,
    priceMinor,
    fastener: null,
  }));
}
