import { formatDay, type Day } from '../../day';
import { readSerial, writeSerial, type PreparedShop, type SerialScheme } from '../../build-date';
import type { FitRuleFile } from '../../fit-rules';
import { writeInstant, type Calendar } from '../calendar';
import type { LineRoom, Paper, PositionRoom, Saying, SerialMark } from '../lines/line-room';
import { schemeUsedOn } from '../makers/serial-schemes';
import { inForceOf, knownFrom, sourceKey } from './papers-of-line';
import { keyOfPart } from './part-keys';

/** What rules are made with. */
export interface Shelf {
  readonly calendar: Calendar;
  readonly schemes: readonly SerialScheme[];
  /** The same schemes, made ready for reading. */
  readonly reader: PreparedShop;
}

/** The key of the nth rule (from 1) of a position. */
export function ruleKey(line: LineRoom, position: string, n: number): string {
  return `${line.code}-${position}-${n}`;
}

/** Every version of every rule of a line, in the order of the papers that say them. */
export function rulesOfLine(line: LineRoom, shelf: Shelf): FitRuleFile[] {
  return line.positions.flatMap((position) =>
    position.rules.flatMap((saying, index) => {
      const rule = ruleOf(line, position, saying, index + 1, line.papers[saying.paper]!, shelf);
      const ender = saying.terms.endedBy === undefined ? null : line.papers[saying.terms.endedBy]!;
      return ender === null ? [rule] : endedVersions(rule, ender, shelf.calendar);
    }),
  );
}

/** One rule as a paper opens it. */
export function ruleOf(
  line: LineRoom,
  position: PositionRoom,
  { paper: name, part, terms }: Saying,
  n: number,
  paper: Paper,
  shelf: Shelf,
): FitRuleFile {
  const key = (number: string) => keyOfPart(line.maker, number);
  return {
    key: ruleKey(line, position.code, n),
    version: 1,
    line: line.code,
    models: [...(terms.models ?? [])],
    options: [
      ...(terms.fitted === undefined ? [] : [{ option: terms.fitted, fitted: true }]),
      ...(terms.notFitted === undefined ? [] : [{ option: terms.notFitted, fitted: false }]),
    ],
    positions: [position.code],
    built: { from: dayOrNull(terms.built?.[0]), to: dayOrNull(terms.built?.[1]) },
    serials: serialSpanOf(line, terms.serials, shelf),
    inForce: { from: formatDay(inForceOf(paper)), to: null },
    known: { from: writeInstant(knownFrom(paper, shelf.calendar)), to: null },
    source: sourceKey(line, name),
    required: part === null ? null : key(part),
    allowed: (terms.allows ?? []).map(key),
    barred: (terms.bars ?? []).map(([number, reason, note]) => ({
      ...{ part: key(number), reason, note },
      ...(terms.voids?.includes(number) ? { voidsWarranty: true as const } : {}),
    })),
    action: terms.action ?? 'nothing',
    replaces: (terms.replaces ?? []).map((other) => ruleKey(line, position.code, other)),
  };
}

/** Ending a rule closes what was known of it and opens a version that says when it ended. */
function endedVersions(rule: FitRuleFile, ender: Paper, calendar: Calendar): FitRuleFile[] {
  const heard = writeInstant(knownFrom(ender, calendar));
  return [
    { ...rule, known: { from: rule.known.from, to: heard } },
    {
      ...rule,
      version: 2,
      inForce: { from: rule.inForce.from, to: formatDay(inForceOf(ender)) },
      known: { from: heard, to: null },
    },
  ];
}

function serialSpanOf(
  line: LineRoom,
  serials: { readonly from?: SerialMark; readonly to?: SerialMark } | undefined,
  shelf: Shelf,
): FitRuleFile['serials'] {
  const mark = serials?.from ?? serials?.to;
  if (!serials || !mark) return null;
  const scheme = schemeUsedOn(shelf.schemes, line.maker, mark.day);
  const key = (of: SerialMark | undefined) => (of ? serialKeyOf(scheme, of, shelf) : null);
  return { scheme: scheme.id, from: key(serials.from), to: key(serials.to) };
}

/** The key of the unit with that running number, built on that day. */
export function serialKeyOf(scheme: SerialScheme, mark: SerialMark, { reader, calendar }: Shelf): string {
  const serial = writeSerial(scheme, mark.day, { sequence: mark.sequence });
  const reading = readSerial(serial, { maker: scheme.maker }, reader, calendar.today).readings.find(
    (one) => one.scheme === scheme.id,
  );
  const found = reading?.keys.find(({ days }) => days.some((span) => span.from <= mark.day && mark.day < span.to));
  if (!found) throw new RangeError(`serial ${serial} does not read back by ${scheme.id}`);
  return found.key;
}

function dayOrNull(value: Day | null | undefined): string | null {
  return value === null || value === undefined ? null : formatDay(value);
}
