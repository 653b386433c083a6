import { modelYearCharacter, type Evidence } from '../../build-date';
import { civilDateOf, dayOf, formatDay, fullWeekStart, type Day } from '../../day';
import type { Calendar } from '../calendar';
import type { LineRoom } from '../lines/line-room';
import type { Chance } from '../prng';

/** What there is to be known of a unit's age. `built` is the truth, which some of the evidence misses. */
export interface KnownOfUnit {
  readonly line: LineRoom;
  readonly serial: string | null;
  readonly built: Day;
  readonly firstSeen: Day;
  readonly calendar: Calendar;
}

/** Every piece the counter wrote down. One unit in sixty has a piece that cannot be true beside the others. */
export function evidenceOf(unit: KnownOfUnit, chance: Chance): Evidence[] {
  const { line, serial, built, firstSeen } = unit;
  const pieces: (Evidence | null)[] = [
    serial === null ? null : { id: 'serial', kind: 'serial-scheme', maker: line.maker, line: line.code, serial },
    productionSpan(line),
    { id: 'first-seen', kind: 'first-seen', on: formatDay(firstSeen) },
    chance.happens(0.3) ? { id: 'printed', kind: 'printed-date', date: formatDay(built).slice(0, 7) } : null,
    chance.happens(0.3) ? receipt(built, firstSeen, chance) : null,
    rollsOnTyres(line) && chance.happens(0.35) ? tyre(built - chance.whole(20, 160)) : null,
    edition(line, built, chance),
    chance.happens(0.12) ? engine(built) : null,
    chance.happens(0.016) ? wrongReceipt(built, chance) : null,
  ];
  return pieces.filter((piece) => piece !== null);
}

/** What the plate says, as the counter copied it. */
export function plateOf({ line, serial }: KnownOfUnit, model: string, evidence: readonly Evidence[]): string {
  const printed = evidence.find((piece) => piece.kind === 'printed-date');
  const standard = evidence.find((piece) => piece.kind === 'standard-edition');
  return [
    `MODEL ${model}`,
    serial === null ? 'SERIAL (cannot be read)' : `SERIAL ${serial}`,
    printed ? `MFD ${printed.date}` : null,
    standard ? `MEETS ${standard.standard}-${standard.edition}` : null,
    line.kind.toUpperCase(),
  ]
    .filter((text) => text !== null)
    .join('\n');
}

function productionSpan({ producedFrom, producedUntil }: LineRoom): Evidence {
  const last = producedUntil === null ? null : formatDay(producedUntil - 1).slice(0, 7);
  return { id: 'production', kind: 'production-span', first: formatDay(producedFrom).slice(0, 7), last };
}

function receipt(built: Day, firstSeen: Day, chance: Chance): Evidence {
  const sold = Math.min(built + chance.whole(25, 420), firstSeen);
  const text = formatDay(sold);
  return { id: 'receipt', kind: 'receipt', date: chance.happens(0.6) ? text : text.slice(0, 7) };
}

/** A receipt of another machine that was kept in the same folder: two years before this one was built. */
function wrongReceipt(built: Day, chance: Chance): Evidence {
  return { id: 'receipt-2', kind: 'receipt', date: formatDay(built - chance.whole(700, 1100)) };
}

const rollsOnTyres = ({ kind }: LineRoom): boolean => kind !== 'tiller' && kind !== 'sickle bar cutter';

/** Week and year of a tyre: week 1 is the first full week, Sunday to Saturday (49 CFR 574.5). */
function tyre(made: Day): Evidence {
  const { year } = civilDateOf(made);
  const first = fullWeekStart(year, 1)!;
  const week = Math.min(Math.max(Math.floor((made - first) / 7) + 1, 1), 52);
  return {
    id: 'tyre',
    kind: 'tyre-code',
    code: `${String(week).padStart(2, '0')}${String(year % 100).padStart(2, '0')}`,
  };
}

/** Snow throwers name the standard they meet; published editions, see libs/build-date. */
function edition({ kind }: LineRoom, built: Day, chance: Chance): Evidence | null {
  if (kind !== 'snow thrower' || !chance.happens(0.25)) return null;
  const newest = built >= dayOf(2014, 10, 1) ? '2014' : built >= dayOf(2005, 1, 1) ? '2005' : null;
  return newest === null ? null : { id: 'standard', kind: 'standard-edition', standard: 'ANSI B71.3', edition: newest };
}

/** The engine of a machine is of its year or the one before. */
function engine(built: Day): Evidence {
  const { year, month } = civilDateOf(built);
  const character = modelYearCharacter(month <= 3 ? year - 1 : year);
  return { id: 'engine', kind: 'engine-family', family: `${character}ZQVS.2081DA`, engine: 'small-spark-ignition' };
}
